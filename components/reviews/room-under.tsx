"use client";
import type { ReactNode } from "react";
import { Button } from "@/components/ui/button";
import { showToast } from "@/components/ui/toast";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import type { DraftCorrection } from "@/server/domain/reviews/draft";
import type { Recap } from "@/server/domain/reviews/recap";
import { dayInWords } from "@/server/domain/time/words";
import { CorrectionEditor, KeepEditor } from "./room-editors";
import { type ClipPlace, changeCorrection, changeKeep, removeCorrection, removeKeep } from "./room-edits";
import styles from "./room-outline.module.css";
import type { RoomDraft } from "./use-room-draft";
import type { Saying } from "./use-saying";

/** What {@link UnderCheckpoint} takes. */
export interface UnderCheckpointProps {
  checkpoint: Checkpoint;
  draft: RoomDraft<"review">;
  recap: Recap;
  saying: Saying;
  maxOpen: number;
  /** The frame on the picture. */
  place: ClipPlace;
  goTo: (clipId: string, frame?: number) => void;
  /** Further acts on the checkpoint, in the same row: to measure it, to show it on the picture. */
  tools?: ReactNode;
}

/** Under a checkpoint: what is open on it already, what is being written, and the ways to correct it or keep it. */
export function UnderCheckpoint(props: UnderCheckpointProps) {
  const { checkpoint, draft, recap, saying, maxOpen, tools } = props;
  const { document, change } = draft;
  const corrections = document.corrections.filter((each) => each.checkpointId === checkpoint.id);
  const keeps = document.keeps.filter((each) => each.checkpointId === checkpoint.id);
  const already = saying.open.filter((each) => each.checkpointId === checkpoint.id);
  const isFull = saying.open.length + document.corrections.length >= maxOpen;
  return (
    <>
      {already.map((each) => (
        <p key={each.id} className={styles.looks}>
          Open since {dayInWords(each.givenOn)}: “{each.cue || each.drill}”
        </p>
      ))}
      {corrections.map((each) => (
        <Written key={each.id} {...props} correction={each} number={numberOf(recap, each.id)} />
      ))}
      {keeps.map((each) => (
        <KeepEditor
          key={each.id}
          roundId={saying.roundId}
          keep={each}
          usual={checkpoint.clearLooksLike}
          onChange={(changes) => change((now) => changeKeep(now, each.id, changes))}
          onRemove={() => change((now) => removeKeep(now, each.id))}
        />
      ))}
      <div className={styles.acts}>
        {corrections.length > 0 ? null : (
          <Button
            variant="link"
            isDisabled={isFull && already.length === 0}
            onPress={() => saying.say("correction", checkpoint)}
            aria-label={`${already.length > 0 ? "Show again" : "Correct"}: ${checkpoint.name}`}
          >
            {already.length > 0 ? "Show again" : "Correct"}
          </Button>
        )}
        {keeps.length > 0 ? null : (
          <Button
            variant="link"
            onPress={() => saying.say("keep", checkpoint)}
            aria-label={`Keep: ${checkpoint.name}`}
          >
            Keep
          </Button>
        )}
        {tools}
        {isFull && corrections.length + already.length === 0 ? (
          <span>{maxOpen} is the most at a time</span>
        ) : null}
      </div>
    </>
  );
}

const numberOf = (recap: Recap, id: string) => recap.corrections.find((each) => each.id === id)?.number ?? 0;

function Written({
  correction,
  number,
  ...props
}: UnderCheckpointProps & { correction: DraftCorrection; number: number }) {
  const { checkpoint, draft, place, goTo, saying } = props;
  const { change } = draft;
  const { id } = correction;
  return (
    <CorrectionEditor
      roundId={saying.roundId}
      correction={correction}
      checkpoint={checkpoint}
      number={number}
      frameNow={correction.clipId === place.clipId ? place.frame : correction.frame}
      onChange={(changes) => change((now) => changeCorrection(now, id, changes))}
      onShow={() => goTo(correction.clipId, correction.frame)}
      onUseFrame={() => change((now) => changeCorrection(now, id, place))}
      onRemove={() => {
        change((now) => removeCorrection(now, id));
        showToast({
          text: `Correction ${number} is off the slip.`,
          onAction: () => change((now) => ({ ...now, corrections: [...now.corrections, correction] })),
        });
      }}
    />
  );
}
