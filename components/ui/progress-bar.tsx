"use client";

import { Label } from "react-aria-components/Label";
import { ProgressBar as AriaProgressBar } from "react-aria-components/ProgressBar";
import styles from "./progress-bar.module.css";

/** What a {@link ProgressBar} takes. */
export interface ProgressBarProps {
  /** What is under way, e.g. "Sending the clip". */
  label: string;
  /** Done so far, 0 to `max`. */
  value: number;
  /** Default 100. */
  max?: number;
  /** How far in words, e.g. "12 of 48 MB, about 2 min left"; also what is read out. */
  words: string;
}

/** How far a long work is, as a bar and in words. */
export function ProgressBar({ label, value, max = 100, words }: ProgressBarProps) {
  return (
    <AriaProgressBar value={value} maxValue={max} valueLabel={words} className={styles.progress}>
      {({ percentage }) => (
        <>
          <Label>{label}</Label>
          <span className={styles.words}>{words}</span>
          <svg className={styles.track} aria-hidden="true">
            <rect className={styles.done} width={`${percentage ?? 0}%`} height="100%" />
          </svg>
        </>
      )}
    </AriaProgressBar>
  );
}
