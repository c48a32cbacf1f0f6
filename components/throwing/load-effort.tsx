import { Disclosure } from "@/components/ui/disclosure";
import { type Column, Table } from "@/components/ui/table";
import { type EffortOfWeek, MAX_EFFORT } from "@/server/domain/throwing/load-effort";
import { figureInWords } from "@/server/domain/throwing/load-in-words";
import { dayInWords } from "@/server/domain/time/words";

const COLUMNS: Column<EffortOfWeek>[] = [
  {
    key: "week",
    heading: "Week of",
    isRowHeading: true,
    cell: (week) => dayInWords(week.weekOf, { withYear: true }),
  },
  { key: "sessions", heading: "Sessions", align: "number", cell: sessionsInWords },
  { key: "load", heading: "Load", align: "number", cell: (week) => week.load ?? "–" },
  { key: "monotony", heading: "Monotony", align: "number", cell: (week) => figureInWords(week.monotony) },
  {
    key: "strain",
    heading: "Strain",
    align: "number",
    cell: ({ strain }) => (strain === null ? "–" : Math.round(strain)),
  },
];

/** Load, monotony and strain of the weeks whose sessions say how hard they were; nothing where none does. */
export function LoadEffort({ weeks }: { weeks: readonly EffortOfWeek[] }) {
  if (weeks.length === 0) return null;
  return (
    <Disclosure summary="How hard the sessions were, week by week">
      <Table
        caption={`Effort (0 to ${MAX_EFFORT}) times minutes of sessions. Load is the week's sum; monotony its daily mean over its standard deviation (the sample's, n − 1); strain load times monotony. Games and throwing at home are not in it. After Foster 1998 and Foster et al. 2001.`}
        columns={COLUMNS}
        rows={weeks.toReversed()}
        rowKey={(week) => week.weekOf}
        onPhone="scroll"
        isFrameFocusable
      />
    </Disclosure>
  );
}

function sessionsInWords({ sessions, withoutEffort }: EffortOfWeek): string {
  return withoutEffort === 0 ? String(sessions) : `${sessions}, ${withoutEffort} without effort`;
}
