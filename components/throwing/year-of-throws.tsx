"use client";
import { WeekBars } from "@/components/charts/week-bars";
import { weekTotal } from "@/components/charts/week-rows";
import { EmptyState } from "@/components/ui/empty-state";
import { type Column, Table } from "@/components/ui/table";
import { THROW_GROUP_WORDS, THROW_GROUPS, type WeekOfThrows } from "@/server/domain/throwing/throws-by-week";
import { dayInWords } from "@/server/domain/time/words";

const KINDS = THROW_GROUPS.map((key) => ({ key, label: THROW_GROUP_WORDS[key] }));

/** Throws by week from the first that was logged, as bars and as a table. */
export function YearOfThrows({ weeks }: { weeks: readonly WeekOfThrows[] }) {
  const thrown = weeks.filter((week) => weekTotal(week, KINDS) > 0);
  const first = thrown[0];
  if (!first) {
    return (
      <EmptyState title="Nothing was logged in these twelve months">
        What is logged stands here week by week.
      </EmptyState>
    );
  }
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
      weeks={weeks.filter((week) => week.weekOf >= first.weekOf)}
      kinds={KINDS}
      noun="throws"
      table={
        <Table
          caption="Throws a week; weeks without throws are left out"
          columns={columns}
          rows={thrown.toReversed()}
          rowKey={(week) => week.weekOf}
        />
      }
    />
  );
}
