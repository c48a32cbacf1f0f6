import type { Answers } from "@/components/wire/answers";
import styles from "./sessions.module.css";

type Correction = Answers["sessions"]["forStaff"]["athletes"][number]["corrections"][number];

/** The corrections of a session's plan, each with its cue, its drill and how it stands. */
export function PlannedCorrections({ corrections }: { corrections: readonly Correction[] }) {
  return (
    <ol className={styles.plan}>
      {corrections.map(({ correctionId, checkpointName, cue, drill, state, isPlanned }) => (
        <li key={correctionId}>
          <b>{checkpointName}</b> <span className={styles.quiet}>{standing(state, isPlanned)}</span>
          <span className={styles.cue}>{cue}</span>
          {drill ? <span className={styles.quiet}>Drill: {drill}</span> : null}
        </li>
      ))}
    </ol>
  );
}

function standing(state: Correction["state"], isPlanned: boolean): string {
  return isPlanned ? `${state}, to confirm` : state;
}
