import { leastToTell } from "./amount-in-words";
import { type BlindRating, coachesOf, FEWEST_ITEMS, itemsOfAll } from "./blind-ratings";
import {
  type JudgementAgreement,
  judgementAgreement,
  type MeasureAgreement,
  measureAgreement,
  tooFewWords,
} from "./coach-agreement";
import { type CoachOffset, coachDifferences } from "./coach-differences";
import { grouped } from "./grouped";
import type { MeasureKind } from "./measure-kind";
import type { SeriesKind } from "./observation";

/** One frame of a blind set, at one checkpoint. */
export interface BlindItem {
  itemId: string;
  checkpointId: string;
  kind: SeriesKind;
}

/** What one coach said of one item; null when it could not be seen. */
export interface GivenRating {
  itemId: string;
  coachId: string;
  value: number | null;
}

/** A coach who rated too little of a set to be counted in its figures. */
export interface UncountedCoach {
  coachId: string;
  rated: number;
}

/** Where the coaches lie at one checkpoint. */
export interface CheckpointOffsets {
  checkpointId: string;
  /** That all coaches have seen. */
  items: number;
  /** Mean of the greatest less the least value. */
  apart: number;
  byCoach: CoachOffset[];
}

/** One item on which two coaches or more differ by what shows when it is written. */
export interface ItemApart {
  itemId: string;
  checkpointId: string;
  apart: number;
  said: Omit<GivenRating, "itemId">[];
}

/** What a closed set says of one kind: all its judgements, or all measures of one kind. */
export interface KindResults {
  kind: SeriesKind;
  items: number;
  coaches: string[];
  /** How often a coach could not see what was asked for. */
  unseen: number;
  /** Why there is no figure at all, in the fixed words; null where some is told or says so itself. */
  tooFew: string | null;
  measures: MeasureAgreement | null;
  judgements: JudgementAgreement | null;
  byCoach: CoachOffset[];
  byCheckpoint: CheckpointOffsets[];
  /** The farthest apart first. */
  itemsApart: ItemApart[];
}

/** What a closed set says. */
export interface SetResults {
  kinds: KindResults[];
  uncounted: UncountedCoach[];
}

/**
 * How far coaches agree on a blind set, kind by kind. A coach who rated fewer than half of it, or fewer than five frames,
 * is named and left out of the figures: agreement is told of frames that all have seen, and those few would be all that
 * is left (common practice, no source).
 */
export function blindResults(items: readonly BlindItem[], ratings: readonly GivenRating[]): SetResults {
  const counts = grouped(ratings, ({ coachId }) => coachId).map((group) => ({
    coachId: group[0]?.coachId ?? "",
    rated: group.length,
  }));
  const enough = Math.max(FEWEST_ITEMS, items.length / 2);
  const counted = new Set(counts.filter(({ rated }) => rated >= enough).map(({ coachId }) => coachId));
  const said = ratings.filter(({ coachId }) => counted.has(coachId));
  return {
    kinds: grouped(items, ({ kind }) => kind).map((group) => kindResults(group, said)),
    uncounted: counts.filter(({ coachId }) => !counted.has(coachId)),
  };
}

function kindResults(items: readonly BlindItem[], ratings: readonly GivenRating[]): KindResults {
  const kind = items[0]?.kind ?? "judgement";
  const given = ratings.filter(({ itemId }) => items.some((item) => item.itemId === itemId));
  const seen = given.flatMap(({ value, ...rating }): BlindRating[] => {
    const item = items.find(({ itemId }) => itemId === rating.itemId);
    return value === null || !item ? [] : [{ ...rating, value, checkpointId: item.checkpointId }];
  });
  const coaches = coachesOf(seen);
  const ofAll = itemsOfAll(seen, coaches);
  return {
    ...{ kind, items: items.length, coaches, unseen: given.length - seen.length },
    tooFew: coaches.length < 2 ? tooFewWords(coaches.length, ofAll.length) : null,
    measures: kind === "judgement" ? null : measureAgreement(kind as MeasureKind, seen),
    judgements: kind === "judgement" ? judgementAgreement(seen) : null,
    byCoach: coachDifferences(ofAll, coaches).byCoach,
    byCheckpoint: grouped(ofAll, ({ checkpointId }) => checkpointId)
      .map((group): CheckpointOffsets => {
        const { byCoach, byCheckpoint } = coachDifferences(group, coaches);
        const apart = byCheckpoint[0]?.apart ?? 0;
        return { checkpointId: group[0]?.checkpointId ?? "", items: group.length, apart, byCoach };
      })
      .sort((one, other) => other.apart - one.apart),
    itemsApart: itemsApart(items, given),
  };
}

function itemsApart(items: readonly BlindItem[], given: readonly GivenRating[]): ItemApart[] {
  return items
    .flatMap(({ itemId, checkpointId, kind }): ItemApart[] => {
      const said = given.flatMap(({ itemId: of, ...each }) => (of === itemId ? [each] : []));
      const values = said.flatMap(({ value }) => (value === null ? [] : [value]));
      const apart = values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
      return apart < leastToTell(kind) ? [] : [{ itemId, checkpointId, apart, said }];
    })
    .sort((one, other) => other.apart - one.apart);
}
