"use client";
import { WeekLines } from "@/components/charts/week-lines";
import { type Column, Table } from "@/components/ui/table";
import type { LoadOfWeek } from "@/server/domain/throwing/load-by-week";
import { figureInWords } from "@/server/domain/throwing/load-in-words";
import { dayInWords } from "@/server/domain/time/words";

const LINES = [
  { key: "coupled", label: "Coupled: 7 days against the 28 they belong to" },
  { key: "uncoupled", label: "Uncoupled: 7 days against the 21 before them" },
  { key: "weighted", label: "Weighted: 7 against 28 days, later days counting for more" },
] as const;

const COLUMNS: Column<LoadOfWeek>[] = [
  {
    key: "week",
    heading: "Week of",
    isRowHeading: true,
    cell: (week) => dayInWords(week.weekOf, { withYear: true }),
  },
  { key: "throws", heading: "Throws", align: "number", cell: (week) => week.throws },
  { key: "mean7", heading: "A day over 7", align: "number", cell: (week) => figureInWords(week.mean7) },
  { key: "mean28", heading: "A day over 28", align: "number", cell: (week) => figureInWords(week.mean28) },
  { key: "coupled", heading: "Coupled", align: "number", cell: (week) => figureInWords(week.coupled) },
  { key: "uncoupled", heading: "Uncoupled", align: "number", cell: (week) => figureInWords(week.uncoupled) },
  { key: "weighted", heading: "Weighted", align: "number", cell: (week) => figureInWords(week.weighted) },
];

/** The ratios over 7 and 28 days at the end of each week, as lines and as a table. Nothing in it is good or bad. */
export function LoadChart({ weeks }: { weeks: readonly LoadOfWeek[] }) {
  return (
    <WeekLines
      title="The last 7 days beside the last 28, at the end of each week"
      weeks={weeks.map(({ weekOf, coupled, uncoupled, weighted }) => ({
        weekOf,
        figures: { coupled, uncoupled, weighted },
      }))}
      lines={LINES}
      inWords={figureInWords}
      table={
        <Table
          caption="Each week as of its Sunday, the running one as of today; a dash where the log is younger than 28 days or nothing was thrown to compare with"
          columns={COLUMNS}
          rows={weeks.toReversed()}
          rowKey={(week) => week.weekOf}
          onPhone="scroll"
          isFrameFocusable
        />
      }
    />
  );
}
