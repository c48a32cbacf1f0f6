import { mean } from "./mean";
import { requireFinite } from "./require-finite";
import { type TooFew, tooFew } from "./too-few";
import { twoWay } from "./two-way";

/** Standard errors that 95 % lie within, as Weir 2005 rounds it. */
export const REACH_95 = 1.96;

/** How far a measure strays by itself. */
export interface MeasurementError {
  kind: "measurement_error";
  /** What was measured again, and how many degrees of freedom the error rests on. */
  subjects: number;
  freedom: number;
  /** Standard error of measurement, in the unit of the measure. */
  standardError: number;
  /** The least difference of two observations that is more than error, at 95 %. */
  detectableChange: number;
}

/**
 * The minimal detectable change: 1.96 times the square root of 2 times the standard error (Weir 2005).
 * @example detectableChange(7.556926813) // 20.94673, rounded
 */
export function detectableChange(standardError: number): number {
  return standardError * REACH_95 * Math.SQRT2;
}

/**
 * The error of a measure by a two-way model: the square root of the mean square of error, so that a shift of all
 * subjects alike from one repeat to the next (practice, another day) is not counted as error (Weir 2005, J Strength
 * Cond Res 19:231-240).
 * @param table one row a subject, one column a repeat
 * @returns too_few below two subjects or two repeats; 0 where every repeat agrees
 * @throws RangeError for rows of different lengths: the caller's fault
 * @example either data set of Weir 2005: standard error 7.56, detectable change 20.95 (20.96 in the paper, which
 *   rounds before it multiplies)
 */
export function measurementError(table: readonly (readonly number[])[]): MeasurementError | TooFew {
  const squares = twoWay(table);
  if (squares.kind === "too_few") return squares;
  const { subjects, columns, ofError } = squares;
  return errorOf(subjects, (subjects - 1) * (columns - 1), ofError);
}

/**
 * The error of a measure by a one-way model, for repeats that are not of one number for each subject and in no order
 * that means anything: the root of the pooled variance within subjects (Bland and Altman 1996, BMJ 313:744).
 * @param repeats for each subject its observations; a subject with one alone says nothing and is left out
 * @returns too_few while no subject has two
 * @example withinSubjectError([[1, 3], [5], [4, 4, 4]]) // standard error 0.8165, rounded: root of 2/3
 */
export function withinSubjectError(repeats: readonly (readonly number[])[]): MeasurementError | TooFew {
  requireFinite(repeats.flat());
  const repeated = repeats.filter((each) => each.length > 1);
  if (repeated.length === 0) return tooFew(Math.max(0, ...repeats.map((each) => each.length)), 2);
  const freedom = repeated.reduce((sum, each) => sum + each.length - 1, 0);
  const squares = repeated.reduce((sum, each) => sum + squaresAbout(each), 0);
  return errorOf(repeated.length, freedom, squares / freedom);
}

function squaresAbout(values: readonly number[]): number {
  const middle = mean(values) ?? 0;
  return values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
}

function errorOf(subjects: number, freedom: number, meanSquare: number): MeasurementError {
  const standardError = Math.sqrt(meanSquare);
  return {
    kind: "measurement_error",
    subjects,
    freedom,
    standardError,
    detectableChange: detectableChange(standardError),
  };
}
