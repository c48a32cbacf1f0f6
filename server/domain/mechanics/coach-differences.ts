import { mean } from "@/server/domain/statistics/mean";
import { amountInWords } from "./amount-in-words";
import type { RatedItem } from "./blind-ratings";
import { grouped } from "./grouped";
import type { SeriesKind } from "./observation";

/** How far one coach lies from the others. */
export interface CoachOffset {
  coachId: string;
  /** Mean over the items of this coach's value less the mean of the others'; plus is more. */
  offset: number;
}

/** How far the coaches lie apart at one checkpoint. */
export interface CheckpointApart {
  checkpointId: string;
  items: number;
  /** Mean over its items of the greatest less the least value. */
  apart: number;
}

/** Who differs, and on what. */
export interface CoachDifferences {
  /** In the order of the coaches. */
  byCoach: CoachOffset[];
  /** The farthest apart first. */
  byCheckpoint: CheckpointApart[];
  /** Up to three items on which they lie farthest apart, for looking at together; none on which they agree. */
  itemIds: string[];
}

const ITEMS_TO_LOOK_AT = 3;

/**
 * Who differs by how much, at which checkpoints, and on which items. It says who differs from whom, never who is right.
 * @param items that all of the coaches have rated
 * @example values 40 43 and 50 51 of two coaches: the first 2 less, the second 2 more, 2 apart on average
 */
export function coachDifferences(items: readonly RatedItem[], coaches: readonly string[]): CoachDifferences {
  const apart = [...items].sort((one, other) => rangeOf(other) - rangeOf(one));
  return {
    byCoach: coaches.map((coachId, at) => ({ coachId, offset: offsetOf(items, at) })),
    byCheckpoint: grouped(items, ({ checkpointId }) => checkpointId)
      .map((group) => ({
        checkpointId: group[0]?.checkpointId ?? "",
        items: group.length,
        apart: mean(group.map(rangeOf)) ?? 0,
      }))
      .sort((one, other) => other.apart - one.apart),
    itemIds: apart
      .filter((item) => rangeOf(item) > 0)
      .slice(0, ITEMS_TO_LOOK_AT)
      .map(({ itemId }) => itemId),
  };
}

/**
 * How far a coach lies from the others, after the coach's name.
 * @example offsetInWords("front_knee_flexion", -2) // "2° less than the others"
 */
export function offsetInWords(kind: SeriesKind, offset: number): string {
  const amount = amountInWords(kind, offset);
  if (Number.parseFloat(amount) === 0) return "as the others";
  return `${amount} ${offset > 0 ? "more" : "less"} than the others`;
}

function offsetOf(items: readonly RatedItem[], at: number): number {
  const each = items.map(({ values }) => {
    const others = mean(values.filter((_, index) => index !== at));
    return others === null ? 0 : (values[at] ?? others) - others;
  });
  return mean(each) ?? 0;
}

function rangeOf({ values }: RatedItem): number {
  return values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
}
