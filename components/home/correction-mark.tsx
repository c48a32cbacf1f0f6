import type { CorrectionState } from "@/server/domain/reviews/correction-state";
import styles from "./family-home.module.css";

const WORDS: Record<CorrectionState, string> = {
  given: "given",
  showing: "showing",
  held: "held",
  retired: "retired",
};

/** How a correction stands: an empty, half or full circle and the word; one that held before says that it came back. */
export function CorrectionMark({ state, cameBack }: { state: CorrectionState; cameBack: boolean }) {
  return (
    <span className={styles.state}>
      <svg viewBox="0 0 14 14" aria-hidden="true">
        <circle cx="7" cy="7" r="5.5" className={state === "held" ? styles.filled : undefined} />
        {state === "showing" ? <path d="M7 1.5a5.5 5.5 0 0 1 0 11z" className={styles.filled} /> : null}
        {state === "retired" ? <path d="M3 11L11 3" /> : null}
      </svg>
      {cameBack ? `${WORDS[state]}, came back` : WORDS[state]}
    </span>
  );
}
