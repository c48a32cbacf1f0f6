"use client";
import { WeekBars } from "@/components/charts/week-bars";
import { weekTotal } from "@/components/charts/week-rows";
import { type Column, Table } from "@/components/ui/table";
import { THROW_GROUP_WORDS, THROW_GROUPS, type WeekOfThrows } from "@/server/domain/throwing/throws-by-week";
import { dayInWords } from "@/server/domain/time/words";

const KINDS = THROW_GROUPS.map((key) => ({ key, label: THROW_GROUP_WORDS[key] }));

/** A year's throws by week, as bars and as a table; only what was logged. */
export function YearOfThrows({ weeks }: { weeks: readonly WeekOfThrows[] }) {
  const thrown = weeks.filter((week) => weekTotal(week, KINDS) > 0);
  const columns: Column<WeekOfThrows>[] = [
    {
      key: "week",
      heading: "Week of",
      isRowHeading: true,
      cell: (week) => dayInWords(week.weekOf, { withYear: true }),
    },
    ...KINDS.map(
      ({ key, label }): Column<WeekOfThrows> => ({
        key,
        heading: label,
        align: "number",
        cell: (week) => week.counts[key],
        total: thrown.reduce((sum, week) => sum + week.counts[key], 0),
      }),
    ),
  ];
  return (
    <WeekBars
      title="Throws a week, as logged"
      weeks={weeks}
      kinds={KINDS}
      noun="throws"
      table={
        <Table
          caption="Throws a week; weeks without throws are left out"
          columns={columns}
          rows={thrown.toReversed()}
          rowKey={(week) => week.weekOf}
          empty="Nothing was logged in these twelve months."
        />
      }
    />
  );
}
