import { type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import type { TimeAxis } from "./time-axis";

/** One judgement on a scale of steps from 0. */
export interface ScorePoint {
  day: CalendarDay;
  score: number;
}

/** Judgements that belong together, e.g. those from one camera view. */
export interface ScoreSeries {
  name: string;
  points: readonly ScorePoint[];
}

/** One judgement as the chart draws it. */
export interface ScoreRow {
  /** Days since the axis began. */
  offset: number;
  day: CalendarDay;
  /** Which series it belongs to, counted from 0. */
  series: number;
  score: number;
}

/** All judgements of all series in the order of their days; several on one day keep the order they came in. */
export function scoreRows(series: readonly ScoreSeries[], axis: TimeAxis): ScoreRow[] {
  return series
    .flatMap(({ points }, index) =>
      points.map(({ day, score }) => ({
        offset: daysBetween(axis.startDay, day),
        day,
        series: index,
        score,
      })),
    )
    .sort((a, b) => a.offset - b.offset);
}
