import { grouped } from "./grouped";

/** What one coach said of one item of a blind set: a clip at one checkpoint, which several coaches see alone. */
export interface BlindRating {
  itemId: string;
  checkpointId: string;
  coachId: string;
  /** A judgement from 0 to 3, or a measure in the unit of its kind. */
  value: number;
}

/** One item and what each coach said of it, in the order of the coaches. */
export interface RatedItem {
  itemId: string;
  checkpointId: string;
  values: number[];
}

/** Fewer items than this tell nothing of how coaches agree. Common practice, no source. */
export const FEWEST_ITEMS = 5;

/** The coaches of a blind set, in the order in which they first come. */
export function coachesOf(ratings: readonly BlindRating[]): string[] {
  return [...new Set(ratings.map(({ coachId }) => coachId))];
}

/**
 * The items that all of these coaches have rated. Of a coach who rated one twice the first counts: the second look is
 * not blind to it.
 * @example of two items, the second seen by one of two coaches: the first alone
 */
export function itemsOfAll(ratings: readonly BlindRating[], coaches: readonly string[]): RatedItem[] {
  return grouped(ratings, ({ itemId }) => itemId).flatMap((ofItem) => {
    const [first] = ofItem;
    const values = coaches.flatMap((coachId) => {
      const rating = ofItem.find((each) => each.coachId === coachId);
      return rating === undefined ? [] : [rating.value];
    });
    if (first === undefined || values.length < coaches.length) return [];
    return [{ itemId: first.itemId, checkpointId: first.checkpointId, values }];
  });
}

/** {@link coachesOf} two by two. @example pairsOf(["a", "b", "c"]) // [["a", "b"], ["a", "c"], ["b", "c"]] */
export function pairsOf(coaches: readonly string[]): [string, string][] {
  return coaches.flatMap((one, at) => coaches.slice(at + 1).map((other): [string, string] => [one, other]));
}
