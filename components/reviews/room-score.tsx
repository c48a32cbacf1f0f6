"use client";
import { ToggleButton } from "react-aria-components/ToggleButton";
import { ToggleButtonGroup } from "react-aria-components/ToggleButtonGroup";
import { JUDGEMENT_WORDS, type JudgementScore, judgementWord } from "@/server/domain/mechanics/judgement";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./room-outline.module.css";

/** What a {@link RoomScore} takes. */
export interface RoomScoreProps {
  checkpointName: string;
  score: JudgementScore | null;
  last: { score: JudgementScore; judgedOn: CalendarDay } | undefined;
  /** Null takes the judgement back; without it the score is only read. */
  onScore?: (score: JudgementScore | null) => void;
}

const SCORES = JUDGEMENT_WORDS.map((_word, score) => score as JudgementScore);

/** A checkpoint's judgement on this clip, 0 to 3 and the word for it, beside the last one there was. */
export function RoomScore({ checkpointName, score, last, onScore }: RoomScoreProps) {
  return (
    <div className={styles.score}>
      <ToggleButtonGroup
        className={styles.steps}
        aria-label={`${checkpointName}: 0 absent to 3 clear`}
        isDisabled={!onScore}
        selectionMode="single"
        selectedKeys={score === null ? [] : [String(score)]}
        onSelectionChange={(keys) => {
          const [chosen] = keys;
          onScore?.(chosen === undefined ? null : (Number(chosen) as JudgementScore));
        }}
      >
        {SCORES.map((each) => (
          <ToggleButton
            key={each}
            id={String(each)}
            className={styles.step}
            aria-label={`${each} ${judgementWord(each)}`}
          >
            {each}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      <span className={styles.scoreWord}>
        <b>{score === null ? "" : judgementWord(score)}</b>
        {score !== null && last ? ", " : ""}
        {last ? `last ${last.score}, ${dayInWords(last.judgedOn)}` : score === null ? "not judged" : ""}
      </span>
    </div>
  );
}
