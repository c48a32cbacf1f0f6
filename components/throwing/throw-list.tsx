import { type Column, Table } from "@/components/ui/table";
import { THROW_KIND_WORDS, throwsInWords } from "@/server/domain/throwing/throw-words";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { LogRow } from "./arm-answer";
import { CorrectEntry } from "./correct-entry";
import styles from "./throwing-page.module.css";

const ORIGINS: Record<LogRow["origin"], string> = { log: "", session: "session", clip: "clip" };

/** The log, latest first; a corrected row says what it had said. */
export function ThrowList({ rows, today }: { rows: readonly LogRow[]; today: CalendarDay }) {
  const columns: Column<LogRow>[] = [
    { key: "day", heading: "Day", isRowHeading: true, cell: (row) => dayInWords(row.thrownOn) },
    { key: "what", heading: "What", cell: (row) => <What row={row} /> },
    { key: "count", heading: "Throws", align: "number", isFit: true, cell: (row) => row.pitches },
    {
      key: "by",
      heading: "Told by",
      cell: (row) => [row.byName, ORIGINS[row.origin]].filter(Boolean).join(", "),
    },
    {
      key: "correct",
      heading: "Correct",
      isHeadingHidden: true,
      isFit: true,
      cell: (row) => (row.mayCorrect ? <CorrectEntry row={row} today={today} /> : null),
    },
  ];
  return (
    <Table
      caption="The throw log"
      isCaptionHidden
      columns={columns}
      rows={rows}
      rowKey={(row) => row.id}
      empty="Nothing is on the log yet."
    />
  );
}

function What({ row }: { row: LogRow }) {
  return (
    <>
      {THROW_KIND_WORDS[row.kind]}
      {row.note ? <span className={styles.quiet}>{row.note}</span> : null}
      {row.corrects ? (
        <span className={styles.quiet}>
          corrected; before: {throwsInWords(row.corrects.kind, row.corrects.pitches)},{" "}
          {dayInWords(row.corrects.thrownOn)}
        </span>
      ) : null}
    </>
  );
}
