"use client";
import { Button } from "@/components/ui/button";
import type { Phase } from "@/server/domain/mechanics/delivery";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";
import { KeepEditor } from "./room-editors";
import { addKeep, type ClipPlace, changeKeep, removeKeep } from "./room-edits";
import styles from "./room-slip.module.css";
import type { RoomDraft } from "./use-room-draft";

/** What {@link RoomOwnKeeps} takes. */
export interface RoomOwnKeepsProps {
  draft: RoomDraft<"review">;
  place: ClipPlace;
  /** The phase that is open: where a new keep belongs. */
  phase: Phase | null;
}

/** Keeps that belong to no checkpoint, in the coach's own words. */
export function RoomOwnKeeps({ draft: { document, change }, place, phase }: RoomOwnKeepsProps) {
  const own = document.keeps.filter((each) => each.checkpointId === null);
  const added = { checkpointId: null, phase: phase ?? "wind_up", text: "" } as const;
  return (
    <>
      {own.map((each) => (
        <KeepEditor
          key={each.id}
          keep={each}
          onChange={(text) => change((now) => changeKeep(now, each.id, { text }))}
          onRemove={() => change((now) => removeKeep(now, each.id))}
        />
      ))}
      {document.keeps.length < DRAFT_LIMITS.keeps ? (
        <div className={styles.add}>
          <Button isSmall onPress={() => change((now) => addKeep(now, added, place, crypto.randomUUID()))}>
            Add a keep in your own words
          </Button>
        </div>
      ) : null}
    </>
  );
}
