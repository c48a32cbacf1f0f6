import { median } from "@/server/domain/statistics/quantile";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { CameraView } from "./delivery";
import { grouped } from "./grouped";
import { MEASURE_KINDS } from "./measure-kind";

/** What a series can hold: judgements from 0 to 3, or one kind of measure in its own unit. */
export const SERIES_KINDS = ["judgement", ...MEASURE_KINDS] as const;
export type SeriesKind = (typeof SERIES_KINDS)[number];

/** One look at a checkpoint of one athlete. */
export interface Observation {
  id: string;
  checkpointId: string;
  kind: SeriesKind;
  /** 0 to 3, or a measure in the unit of its kind; null when it was looked for and could not be seen. */
  value: number | null;
  /** The day the delivery was thrown, whenever it was judged or measured. */
  day: CalendarDay;
  /** All three null for what was seen in person. */
  clipId: string | null;
  frame: number | null;
  view: CameraView | null;
  coachId: string;
  pitchType: string | null;
  /** The observation whose frame was looked at again; null for a first look. */
  repeatOfId: string | null;
}

/** What one day brought, counted once. */
export interface ObservedDay {
  day: CalendarDay;
  /** The median of the day's deliveries. */
  value: number;
  deliveries: number;
  /** The least and the greatest single observation of the day, repeats included. */
  least: number;
  greatest: number;
}

/** The observations of one checkpoint that may be compared: one kind, from one view. */
export interface Series {
  checkpointId: string;
  kind: SeriesKind;
  /** Null for what was seen in person. */
  view: CameraView | null;
  /** Those with a value, earliest day first. */
  observations: readonly Observation[];
  days: readonly ObservedDay[];
  /** How many were looked for and could not be seen. */
  unseen: number;
}

/**
 * The series of one athlete. A judgement and a measure never mix, nor do two views: an angle from behind is another
 * angle than the same from the side. Pitch types stay together (common practice, no source).
 * @returns in the order in which each first appears
 */
export function seriesOf(observations: readonly Observation[]): Series[] {
  const groups = grouped(
    observations,
    ({ checkpointId }) => checkpointId,
    ({ kind }) => kind,
    ({ view }) => view,
  );
  return groups.flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const seen = group.filter((each) => each.value !== null).sort((a, b) => compareDays(a.day, b.day));
    const { checkpointId, kind, view } = first;
    const unseen = group.length - seen.length;
    return [{ checkpointId, kind, view, observations: seen, days: observedDays(seen), unseen }];
  });
}

/**
 * Each day once, earliest first. Repeats of one frame are first made one value, their median, on the day of the
 * earliest: a frame that was measured five times weighs no more than the next delivery. Then the median of the day.
 * @param observations of one series; those without a value are left out
 * @example one frame at 40 and 42, another delivery of that day at 47: 44, the median of 41 and 47
 */
export function observedDays(observations: readonly Observation[]): ObservedDay[] {
  const byDay = grouped(framesOf(observations), ({ day }) => day);
  return byDay
    .flatMap((frames) => {
      const value = median(frames.map((frame) => median(frame.values) ?? 0));
      const [first] = frames;
      if (value === null || first === undefined) return [];
      const all = frames.flatMap((frame) => frame.values);
      return [{ day: first.day, value, deliveries: frames.length, ...extremesOf(all) }];
    })
    .sort((a, b) => compareDays(a.day, b.day));
}

/**
 * What tells the error of a series, for the two sources of `MeasureError`: the values of each frame that was looked at
 * again, and of each day with several deliveries the first value of each.
 * @param observations of one athlete, kind and view
 */
export function repeatGroups(observations: readonly Observation[]): {
  sameFrame: number[][];
  sameDay: number[][];
} {
  const frames = framesOf(observations);
  const days = grouped(frames, ({ day }) => day);
  return {
    sameFrame: frames.map(({ values }) => values).filter((values) => values.length > 1),
    sameDay: days.map((each) => each.flatMap(({ values }) => values.slice(0, 1))).filter((v) => v.length > 1),
  };
}

/* A repeat may have been taken weeks after the first look; the delivery is of the day of the first. */
function framesOf(observations: readonly Observation[]): { day: CalendarDay; values: number[] }[] {
  const seen = observations.filter((each) => each.value !== null);
  return grouped(seen, deliveryOf, frameOf).map((group) => ({
    day: group.map(({ day }) => day).sort(compareDays)[0] ?? "",
    values: group.flatMap(({ value }) => (value === null ? [] : [value])),
  }));
}

/* A delivery seen in person has no frame; what it repeats tells it from the next. */
const deliveryOf = ({ id, clipId, repeatOfId }: Observation) => clipId ?? repeatOfId ?? id;
const frameOf = ({ clipId, frame }: Observation) => (clipId === null ? "seen" : frame);

const extremesOf = (values: readonly number[]) => ({
  least: Math.min(...values),
  greatest: Math.max(...values),
});
const compareDays = (one: CalendarDay, other: CalendarDay) => (one < other ? -1 : one > other ? 1 : 0);
