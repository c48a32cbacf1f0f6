import { gameInWords } from "@/server/domain/throwing/game-in-words";
import { THROW_KIND_WORDS, throwsInWords } from "@/server/domain/throwing/throw-words";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { LogRow } from "./arm-answer";
import { CorrectEntry } from "./correct-entry";
import type { TeamChoice } from "./game-fields";
import styles from "./throw-list.module.css";

const ORIGINS: Record<LogRow["origin"], string> = { log: "", session: "with a session", clip: "with a clip" };

/** What a {@link ThrowList} takes. */
export interface ThrowListProps {
  rows: readonly LogRow[];
  /** What a correction can choose from. */
  teams: readonly TeamChoice[];
  today: CalendarDay;
}

/** The log, latest first; a corrected row says what it had said. */
export function ThrowList({ rows, teams, today }: ThrowListProps) {
  if (rows.length === 0) return <p>Nothing is on the log yet.</p>;
  return (
    <ul className={styles.list}>
      {rows.map((row) => (
        <li key={row.id} className={styles.row}>
          <span>{dayInWords(row.thrownOn)}</span>
          <span>
            {THROW_KIND_WORDS[row.kind]}
            {gameInWords(row, row) ? <span className={styles.quiet}>{gameInWords(row, row)}</span> : null}
            {row.note ? <span className={styles.quiet}>{row.note}</span> : null}
            <span className={styles.quiet}>
              {[row.byName, ORIGINS[row.origin]].filter(Boolean).join(", ")}
            </span>
            {row.corrects ? (
              <span className={styles.quiet}>
                corrected; before: {throwsInWords(row.corrects.kind, row.corrects.pitches)},{" "}
                {dayInWords(row.corrects.thrownOn)}
              </span>
            ) : null}
          </span>
          <span className={styles.count}>{row.pitches}</span>
          <span className={styles.act}>
            {row.mayCorrect ? <CorrectEntry row={row} teams={teams} today={today} /> : null}
          </span>
        </li>
      ))}
    </ul>
  );
}
