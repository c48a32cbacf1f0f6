"use client";
import type { ReactNode } from "react";
import { Button } from "@/components/ui/button";
import { showToast } from "@/components/ui/toast";
import type { CorrectionView } from "@/server/api/reviews/shapes";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import type { DraftCorrection } from "@/server/domain/reviews/draft";
import type { Recap } from "@/server/domain/reviews/recap";
import { dayInWords } from "@/server/domain/time/words";
import { CorrectionEditor, KeepEditor } from "./room-editors";
import {
  addCorrection,
  addKeep,
  type ClipPlace,
  changeCorrection,
  changeKeep,
  removeCorrection,
  removeKeep,
} from "./room-edits";
import styles from "./room-outline.module.css";
import type { RoomDraft } from "./use-room-draft";

/** What {@link UnderCheckpoint} takes. */
export interface UnderCheckpointProps {
  checkpoint: Checkpoint;
  draft: RoomDraft<"review">;
  recap: Recap;
  open: readonly CorrectionView[];
  maxOpen: number;
  /** The frame on the picture. */
  place: ClipPlace;
  goTo: (clipId: string, frame?: number) => void;
  /** Further acts on the checkpoint, in the same row: to measure it, to show it on the picture. */
  tools?: ReactNode;
}

/** Under a checkpoint: what is open on it already, what is being written, and the ways to correct it or keep it. */
export function UnderCheckpoint(props: UnderCheckpointProps) {
  const { checkpoint, draft, recap, open, maxOpen, place, tools } = props;
  const { document, change } = draft;
  const corrections = document.corrections.filter((each) => each.checkpointId === checkpoint.id);
  const keeps = document.keeps.filter((each) => each.checkpointId === checkpoint.id);
  const already = open.filter((each) => each.checkpointId === checkpoint.id);
  const isFull = open.length + document.corrections.length >= maxOpen;
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
          keep={each}
          onChange={(text) => change((now) => changeKeep(now, each.id, { text }))}
          onRemove={() => change((now) => removeKeep(now, each.id))}
        />
      ))}
      <div className={styles.acts}>
        {corrections.length > 0 ? null : (
          <Button
            variant="link"
            isDisabled={isFull}
            onPress={() => change((now) => addCorrection(now, checkpoint, place, crypto.randomUUID()))}
            aria-label={`Correct: ${checkpoint.name}`}
          >
            Correct
          </Button>
        )}
        {keeps.length > 0 ? null : (
          <Button
            variant="link"
            onPress={() =>
              change((now) =>
                addKeep(
                  now,
                  { checkpointId: checkpoint.id, phase: checkpoint.phase, text: checkpoint.clearLooksLike },
                  place,
                  crypto.randomUUID(),
                ),
              )
            }
            aria-label={`Keep: ${checkpoint.name}`}
          >
            Keep
          </Button>
        )}
        {tools}
        {isFull && corrections.length === 0 ? <span>{maxOpen} is the most at a time</span> : null}
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
  const { checkpoint, draft, place, goTo } = props;
  const { change } = draft;
  const { id } = correction;
  return (
    <CorrectionEditor
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
