import { fQuantile, fTail } from "./distributions";
import type { TwoWay } from "./two-way";

/** Bounds of a correlation; both null where either is not defined. */
export interface IccBounds {
  lower: number | null;
  upper: number | null;
}

/** The bounds for one judge and for the mean of all. */
export interface IccBoundsPair {
  single: IccBounds;
  average: IccBounds;
}

/**
 * The F test against a correlation of 0.
 * @returns f and chance null where nothing is left as error
 * @example testOf(6, 2, 4, 4).f // 3
 */
export function testOf(above: number, below: number, freedomAbove: number, freedomBelow: number) {
  const freedom = [freedomAbove, freedomBelow] as const;
  if (below === 0) return { f: null, chance: null, freedom };
  return { f: above / below, chance: fTail(above / below, freedomAbove, freedomBelow), freedom };
}

/**
 * Bounds of model 1 (Shrout and Fleiss 1979, p. 424).
 * @param share what lies below the upper bound: 0.975 for an interval of 95 %
 */
export function boundsOfOneWay(squares: TwoWay, share: number): IccBoundsPair {
  const { subjects: n, columns: k } = squares;
  return boundsByRatio(squares.ofSubjects, squares.withinSubjects, share, [n - 1, n * (k - 1)], k);
}

/** Bounds of model 3 (Shrout and Fleiss 1979, p. 425); see {@link boundsOfOneWay}. */
export function boundsOfFixed(squares: TwoWay, share: number): IccBoundsPair {
  const { subjects: n, columns: k } = squares;
  return boundsByRatio(squares.ofSubjects, squares.ofError, share, [n - 1, (n - 1) * (k - 1)], k);
}

function boundsByRatio(
  between: number,
  error: number,
  share: number,
  [above, below]: readonly [number, number],
  k: number,
): IccBoundsPair {
  const least = fQuantile(share, above, below) * error;
  const most = error / fQuantile(share, below, above);
  return {
    single: bounds(
      (between - least) / (between + (k - 1) * least),
      (between - most) / (between + (k - 1) * most),
    ),
    average: bounds((between - least) / between, (between - most) / between),
  };
}

/**
 * Bounds of model 2: Satterthwaite's degrees of freedom for the judges' and the error's mean squares together (Shrout
 * and Fleiss 1979, p. 425, after Fleiss and Shrout 1978); see {@link boundsOfOneWay}.
 *
 * Below about a fifth of a degree of freedom the quantile passes 1e15 and comes as Infinity; the lower bound is divided
 * through by it, so that it takes its limit.
 */
export function boundsOfRandom(squares: TwoWay, share: number): IccBoundsPair {
  const { subjects: n, columns: k, ofSubjects, ofColumns, ofError } = squares;
  const freedom = judgesFreedom(squares);
  if (freedom === null) return { single: bounds(1, 1), average: bounds(1, 1) };
  const least = fQuantile(share, n - 1, freedom);
  const most = fQuantile(share, freedom, n - 1);
  const judges = k * ofColumns + (k * n - k - n) * ofError;
  const lower = (n * (ofSubjects / least - ofError)) / (judges + (n * ofSubjects) / least);
  const upper = (n * (most * ofSubjects - ofError)) / (judges + n * most * ofSubjects);
  const ofMean = (single: number) => (k * single) / (1 + single * (k - 1));
  return { single: bounds(lower, upper), average: bounds(ofMean(lower), ofMean(upper)) };
}

/** Multiplied out by the error's mean square, which may be 0; null where neither it nor the judges' is left. */
function judgesFreedom({ subjects: n, columns: k, ofSubjects, ofColumns, ofError }: TwoWay): number | null {
  if (ofColumns === 0 && ofError === 0) return null;
  const below = ofSubjects + (k - 1) * ofError + (k * (ofColumns - ofError)) / n;
  const single = below === 0 ? 0 : (ofSubjects - ofError) / below;
  const judges = k * single * ofColumns;
  const error = (n * (1 + (k - 1) * single) - k * single) * ofError;
  return ((k - 1) * (n - 1) * (judges + error) ** 2) / ((n - 1) * judges ** 2 + error ** 2);
}

function bounds(lower: number, upper: number): IccBounds {
  const isDefined = Number.isFinite(lower) && Number.isFinite(upper);
  return isDefined ? { lower, upper } : { lower: null, upper: null };
}
