"use client";

import { Notice } from "@/components/ui/notice";
import { RadioChoice } from "@/components/ui/radio-choice";
import type { RoundToAnswer } from "@/server/api/rounds-to-answer";
import styles from "./send-clips.module.css";

/** What a {@link RoundChoice} takes. */
export interface RoundChoiceProps {
  rounds: readonly RoundToAnswer[];
  /** Null stands for a new round. */
  chosenId: string | null;
  onChoose: (roundId: string | null) => void;
}

const NEW = "new";

/** What the clip is for: an answer to a review, in place of one that could not be used, or something new. */
export function RoundChoice({ rounds, chosenId, onChoose }: RoundChoiceProps) {
  const chosen = rounds.find((round) => round.roundId === chosenId);
  if (rounds.length === 0) return null;
  return (
    <div className={styles.block}>
      <RadioChoice
        label="What is it for?"
        layout="column"
        options={[
          ...rounds.map((round) => ({ value: round.roundId, label: labelOf(round), hint: round.words })),
          { value: NEW, label: "Something new", hint: "It begins a round of its own." },
        ]}
        value={chosenId ?? NEW}
        onChange={(value) => onChoose(value === NEW ? null : value)}
      />
      {chosen?.reason ? (
        <Notice isStatic word="Why a new clip">
          {chosen.reason}
        </Notice>
      ) : null}
      {chosen && !chosen.isOpen ? (
        <Notice kind="attention" isStatic>
          No throws until then. A clip that was filmed earlier, or dry work, can be sent now.
        </Notice>
      ) : null}
      {chosen?.kind === "reply" && chosen.openCorrections.length > 0 ? (
        <p className={styles.show}>To be seen in it: {chosen.openCorrections.join(", ")}.</p>
      ) : null}
    </div>
  );
}

function labelOf({ kind, coachName }: RoundToAnswer): string {
  if (kind === "retake") return "In place of the clip that could not be used";
  return coachName ? `A reply to the review by ${coachName}` : "A reply to the review";
}
