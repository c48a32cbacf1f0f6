"use client";
import { type ReactNode, useEffect, useRef } from "react";
import { Button } from "react-aria-components/Button";
import type { MarkedFrames } from "@/components/clips/event-strip";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import {
  type CameraView,
  DELIVERY_PHASES,
  EVENT_THAT_OPENS,
  PHASE_WORDS,
  type Phase,
  viewsInWords,
} from "@/server/domain/mechanics/delivery";
import { isInSight } from "@/server/domain/mechanics/find-checkpoints";
import type { JudgementScore } from "@/server/domain/mechanics/judgement";
import type { DraftJudgement } from "@/server/domain/reviews/draft";
import styles from "./room-outline.module.css";
import { RoomScore } from "./room-score";

/** What a {@link RoomOutline} takes. */
export interface RoomOutlineProps {
  checkpoints: readonly Checkpoint[];
  clip: { id: string; view: CameraView | null };
  marks: MarkedFrames;
  judgements: readonly DraftJudgement[];
  latest: readonly { checkpointId: string; score: JudgementScore; judgedOn: string }[];
  /** The phase that is open; the outline shows one at a time. */
  phase: Phase | null;
  /** Opens a phase, with the frame it begins on when that is marked. */
  onPhase: (phase: Phase | null, frame: number | undefined) => void;
  onScore?: (checkpoint: Checkpoint, score: JudgementScore | null) => void;
  /** What stands under a checkpoint: the ways to correct and keep, what is being written. */
  under?: (checkpoint: Checkpoint) => ReactNode;
  /** How many are on the slip, beside a phase's name. */
  slipCount?: (phase: Phase) => number;
}

/** The delivery by its phases: choosing one moves the clip to the moment that opens it. */
export function RoomOutline(props: RoomOutlineProps) {
  const outline = useRef<HTMLOListElement>(null);
  const { phase: open } = props;
  const before = useRef(open);
  useEffect(() => {
    if (before.current === open) return;
    before.current = open;
    // Closing the phase above it moves the opened one: it is brought back into sight.
    outline.current?.querySelector("[aria-expanded=true]")?.scrollIntoView({ block: "nearest" });
  }, [open]);
  return (
    <ol ref={outline} className={styles.outline}>
      {DELIVERY_PHASES.map((phase) => (
        <li key={phase} className={styles.phase}>
          <PhaseHead {...props} own={phase} />
          {phase === props.phase ? <PhaseRows {...props} own={phase} /> : null}
        </li>
      ))}
    </ol>
  );
}

function PhaseHead({ own, ...props }: RoomOutlineProps & { own: Phase }) {
  const { checkpoints, clip, judgements, marks, phase, onPhase } = props;
  const event = EVENT_THAT_OPENS[own];
  const frame = marks[event];
  const here = checkpoints.filter((each) => each.phase === own && isInSight(each, clip.view));
  const judged = here.filter((each) =>
    judgements.some((row) => row.checkpointId === each.id && row.clipId === clip.id),
  );
  const slip = props.slipCount?.(own) ?? 0;
  return (
    <Button
      className={styles.phaseHead}
      aria-expanded={phase === own}
      onPress={() => (phase === own ? onPhase(null, undefined) : onPhase(own, frame))}
    >
      <span className={styles.phaseName}>{PHASE_WORDS[own]}</span>
      {slip > 0 ? <span className={styles.badge}>{slip} on the slip</span> : null}
      <span className={styles.phaseFacts}>
        {here.length === 0 ? "not seen from here" : `${judged.length} of ${here.length} judged`}
        {frame === undefined ? "" : `, from frame ${frame + 1}`}
      </span>
    </Button>
  );
}

function PhaseRows({ own, ...props }: RoomOutlineProps & { own: Phase }) {
  const { checkpoints, clip, judgements, latest, onScore, under } = props;
  return (
    <ul className={styles.rows}>
      {checkpoints
        .filter((each) => each.phase === own)
        .map((checkpoint) => {
          const score =
            judgements.find((row) => row.checkpointId === checkpoint.id && row.clipId === clip.id)?.score ??
            null;
          return isInSight(checkpoint, clip.view) ? (
            <li key={checkpoint.id} className={styles.row}>
              <div className={styles.head}>
                <div>
                  <p className={styles.name}>{checkpoint.name}</p>
                  <p className={styles.looks}>
                    <b>0</b> {checkpoint.absentLooksLike} <b>3</b> {checkpoint.clearLooksLike}
                  </p>
                </div>
                <RoomScore
                  checkpointName={checkpoint.name}
                  score={score}
                  last={latest.find((row) => row.checkpointId === checkpoint.id)}
                  {...(onScore
                    ? { onScore: (chosen: JudgementScore | null) => onScore(checkpoint, chosen) }
                    : {})}
                />
              </div>
              {under?.(checkpoint)}
            </li>
          ) : (
            <li key={checkpoint.id} className={styles.row}>
              <p className={styles.greyed}>
                {checkpoint.name}: seen from the {viewsInWords(checkpoint.views)} only
              </p>
            </li>
          );
        })}
    </ul>
  );
}
