import { upperShare } from "./distributions";
import { boundsOfFixed, boundsOfOneWay, boundsOfRandom, testOf } from "./icc-bounds";
import type { TooFew } from "./too-few";
import { type TwoWay, twoWay } from "./two-way";

/** One form of the intraclass correlation; null where it is not defined, as without any difference at all. */
export interface IccForm {
  icc: number | null;
  /** Both null where the correlation or a bound is not defined. */
  lower: number | null;
  upper: number | null;
  /** Against a correlation of 0; null where nothing is left as error. */
  f: number | null;
  freedom: readonly [above: number, below: number];
  chance: number | null;
}

/** The six forms by the names of Shrout and Fleiss: model, then one judge (1) or the mean of all (k). */
export type IccName = "1,1" | "2,1" | "3,1" | "1,k" | "2,k" | "3,k";

/** All six, and the mean squares they rest on. */
export interface Icc {
  kind: "icc";
  squares: TwoWay;
  forms: Record<IccName, IccForm>;
}

/**
 * The six intraclass correlations of Shrout and Fleiss (1979, Psychol Bull 86:420-428), with the intervals they give;
 * the random form with the corrected degrees of freedom that psych's `ICC` uses too.
 *
 * Model 1: each subject its own judges. Model 2: these judges stand for all judges, and agreeing means the same number.
 * Model 3: these judges alone, and a constant difference between two of them is forgiven.
 * A correlation may be negative; it is told as it is.
 * @param table one row a subject, one column a judge
 * @param level of the intervals, above 0 and below 1
 * @returns too_few below two subjects or two judges
 * @throws RangeError for rows of different lengths or another level: the caller's fault
 * @example the table of Shrout and Fleiss: .17, .29, .71, and of the mean of four .44, .62, .91
 */
export function icc(table: readonly (readonly number[])[], level = 0.95): Icc | TooFew {
  const share = 1 - upperShare(level);
  const squares = twoWay(table);
  if (squares.kind === "too_few") return squares;
  const { subjects: n, columns: k, ofSubjects, ofColumns, ofError, withinSubjects } = squares;
  const betweenJudges = (ofColumns - ofError) / n;
  const oneWay = testOf(ofSubjects, withinSubjects, n - 1, n * (k - 1));
  const crossed = testOf(ofSubjects, ofError, n - 1, (n - 1) * (k - 1));
  const [within, error] = [ofSubjects - withinSubjects, ofSubjects - ofError];
  const [one, mean] = [boundsOfOneWay(squares, share), boundsOfRandom(squares, share)];
  const fixed = boundsOfFixed(squares, share);
  return {
    kind: "icc",
    squares,
    forms: {
      "1,1": form(within, ofSubjects + (k - 1) * withinSubjects, one.single, oneWay),
      "2,1": form(error, ofSubjects + (k - 1) * ofError + k * betweenJudges, mean.single, crossed),
      "3,1": form(error, ofSubjects + (k - 1) * ofError, fixed.single, crossed),
      "1,k": form(within, ofSubjects, one.average, oneWay),
      "2,k": form(error, ofSubjects + betweenJudges, mean.average, crossed),
      "3,k": form(error, ofSubjects, fixed.average, crossed),
    },
  };
}

type Test = Pick<IccForm, "f" | "freedom" | "chance">;
type Bounds = Pick<IccForm, "lower" | "upper">;

function form(above: number, below: number, bounds: Bounds, test: Test): IccForm {
  if (below <= 0) return { icc: null, lower: null, upper: null, ...test };
  return { icc: above / below, ...bounds, ...test };
}
