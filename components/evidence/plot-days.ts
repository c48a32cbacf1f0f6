import type { ChartDay, ChartSpan } from "@/components/charts/day-chart";
import type { TimeAxis } from "@/components/charts/time-axis";
import type { CheckpointEvidence } from "@/server/api/evidence/checkpoint-shape";
import { JUDGEMENT_WORDS } from "@/server/domain/mechanics/judgement";
import { type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";

/** One series of the page. */
export type SeriesView = CheckpointEvidence["series"][number];

/** What a chart of a series draws. */
export interface Plot {
  days: ChartDay[];
  /** The corrections, from given until each held first or was retired. */
  spans: ChartSpan[];
  /** What was published: a standard deviation to either side of each mean. */
  bands: { from: number; to: number }[];
  /** Least and greatest that is to be seen. */
  least: number;
  greatest: number;
}

/** So much of the height stays free above and below what is drawn. */
const AIR = 0.06;

/**
 * A series as its chart draws it. The scale of judgements is that of its steps; that of a measure holds all that is
 * drawn, and is never without height.
 */
export function plotOf(
  series: Pick<SeriesView, "kind" | "days" | "plusMinus" | "published">,
  corrections: CheckpointEvidence["corrections"],
  axis: TimeAxis,
): Plot {
  const at = (day: CalendarDay) => daysBetween(axis.startDay, day);
  const days = series.days.map(({ day, value }) => ({
    ...{ offset: at(day), value },
    reach: series.plusMinus ?? 0,
  }));
  const spans = corrections.map(({ id, givenOn, spans: states }, index) => {
    const end = states.find(({ state }) => state === "held" || state === "retired")?.fromDay;
    return { id, place: index + 1, from: at(givenOn), to: end === undefined ? null : at(end) };
  });
  const bands = series.published.map(({ mean, sd }) => ({ from: mean - sd, to: mean + sd }));
  return { days, spans, bands, ...scaleOf(series.kind, days, bands) };
}

function scaleOf(kind: SeriesView["kind"], days: readonly ChartDay[], bands: Plot["bands"]) {
  if (kind === "judgement") return { least: 0, greatest: JUDGEMENT_WORDS.length - 1 };
  const seen = [
    ...days.flatMap(({ value, reach }) => [value - reach, value + reach]),
    ...bands.flatMap(({ from, to }) => [from, to]),
  ];
  if (seen.length === 0) return { least: 0, greatest: 1 };
  const [low, high] = [Math.min(...seen), Math.max(...seen)];
  const air = Math.max((high - low) * AIR, 1);
  return { least: Math.floor(low - air), greatest: Math.ceil(high + air) };
}
