"use client";
import { Button } from "@/components/ui/button";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";
import { KeepEditor } from "./room-editors";
import { changeKeep, removeKeep } from "./room-edits";
import styles from "./room-slip.module.css";
import type { RoomDraft } from "./use-room-draft";
import type { Saying } from "./use-saying";

/** What {@link RoomOwnKeeps} takes. */
export interface RoomOwnKeepsProps {
  draft: RoomDraft<"review">;
  saying: Saying;
}

/** Keeps that belong to no checkpoint, in the coach's own words. */
export function RoomOwnKeeps({ draft: { document, change }, saying }: RoomOwnKeepsProps) {
  const own = document.keeps.filter((each) => each.checkpointId === null);
  return (
    <>
      {own.map((each) => (
        <KeepEditor
          key={each.id}
          roundId={saying.roundId}
          keep={each}
          onChange={(changes) => change((now) => changeKeep(now, each.id, changes))}
          onRemove={() => change((now) => removeKeep(now, each.id))}
        />
      ))}
      {document.keeps.length < DRAFT_LIMITS.keeps ? (
        <div className={styles.add}>
          <Button isSmall onPress={() => saying.keepInWords("")}>
            Add a keep in your own words
          </Button>
        </div>
      ) : null}
    </>
  );
}
