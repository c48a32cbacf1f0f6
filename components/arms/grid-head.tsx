// biome-ignore-all lint/a11y/noRedundantRoles: a browser drops the roles of a table whose rows become a grid on phones
import { VisuallyHidden } from "@/components/ui/visually-hidden";
import styles from "./arm-grid.module.css";
import type { BoardDays } from "./board-words";

/** The days over the columns, today framed. */
export function GridHead({ days }: { days: BoardDays }) {
  return (
    <thead role="rowgroup" className={styles.head}>
      <tr role="row" aria-rowindex={1} className={styles.headRow}>
        <th role="columnheader" scope="col" aria-colindex={1} className={styles.corner} data-corner>
          Athlete
        </th>
        {days.words.map((words, index) => (
          <th
            key={words}
            role="columnheader"
            scope="col"
            aria-colindex={index + 2}
            className={styles.day}
            data-today={index === days.today ? "" : undefined}
          >
            <DayHead words={words} isToday={index === days.today} />
          </th>
        ))}
      </tr>
    </thead>
  );
}

/** "Wed", "25 Nov": two lines of one day, heard as one. */
function DayHead({ words, isToday }: { words: string; isToday: boolean }) {
  const [weekday, ...date] = words.split(" ");
  return (
    <>
      <span className={styles.weekday}>{isToday ? "Today" : weekday}</span>{" "}
      {isToday ? <VisuallyHidden>{weekday} </VisuallyHidden> : null}
      <span className={styles.date}>{date.join(" ")}</span>
    </>
  );
}
