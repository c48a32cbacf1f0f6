"use client";
import type { ReactNode } from "react";
import { Button } from "@/components/ui/button";
import { PHASE_WORDS, type Phase } from "@/server/domain/mechanics/delivery";
import type { ReviewDraft } from "@/server/domain/reviews/draft";
import type { Recap } from "@/server/domain/reviews/recap";
import styles from "./room-slip.module.css";
import { type SlipRoom, slipMeasures } from "./slip-measures";

/** What a {@link RoomSlip} takes. */
export interface RoomSlipProps {
  recap: Recap;
  /** The clip and frame of each, by the draft's ids. */
  draft: ReviewDraft;
  room: SlipRoom;
  onOpen: (place: { clipId: string | null; frame: number | null; phase: Phase }) => void;
  /** Stands after the list: the way to add a keep of one's own words. */
  children?: ReactNode;
}

/** The slip: corrections numbered as the delivery runs, keeps under them. It is what the family will read. */
export function RoomSlip({ recap, draft, room, onOpen, children }: RoomSlipProps) {
  const rowOf = (id: string) => [...draft.corrections, ...draft.keeps].find((row) => row.id === id);
  const clipOf = (id: string) => rowOf(id)?.clipId ?? null;
  const measured = (id: string) =>
    slipMeasures(rowOf(id)?.checkpointId ?? null, draft.measures, room).map((each) => (
      <span key={each.id} className={styles.measured}>
        {each.words}
      </span>
    ));
  return (
    <>
      {recap.count === 0 ? (
        <p className={styles.empty}>
          No correction yet. Type two letters of what you see, or open a phase and press Correct beside it.
        </p>
      ) : (
        <ol className={styles.list}>
          {recap.corrections.map((row) => (
            <li key={row.id} className={styles.entry}>
              <span className={styles.number}>{row.number}</span>
              <span className={row.cue.trim() ? styles.cue : styles.unwritten}>
                {row.cue.trim() || "The cue is still to be written"}
              </span>
              <Button variant="link" onPress={() => onOpen({ ...row, clipId: clipOf(row.id) })}>
                Frame {row.frame + 1}
              </Button>
              <span className={styles.detail}>
                {row.checkpointName}, {PHASE_WORDS[row.phase].toLowerCase()}
                {row.drill.trim() ? `. Drill: ${row.drill.trim()}` : ""}
              </span>
              {measured(row.id)}
            </li>
          ))}
        </ol>
      )}
      {recap.keeps.length > 0 ? <h3 className={styles.sub}>Keep</h3> : null}
      <ul className={styles.list}>
        {recap.keeps.map((row) => (
          <li key={row.id} className={styles.entry}>
            <span aria-hidden="true">–</span>
            <span className={row.text.trim() ? undefined : styles.unwritten}>
              {row.text.trim() || "Still to be written"}
            </span>
            {row.frame === null ? null : (
              <Button variant="link" onPress={() => onOpen({ ...row, clipId: clipOf(row.id) })}>
                Frame {row.frame + 1}
              </Button>
            )}
            {measured(row.id)}
          </li>
        ))}
      </ul>
      {children}
    </>
  );
}
