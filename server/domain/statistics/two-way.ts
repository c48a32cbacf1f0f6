import { mean } from "./mean";
import { requireFinite } from "./require-finite";
import { type TooFew, tooFew } from "./too-few";

/** Mean squares of a table with a row for each subject and a column for each judge or repeat. */
export interface TwoWay {
  kind: "two_way";
  subjects: number;
  columns: number;
  /** Between subjects: BMS of Shrout and Fleiss. */
  ofSubjects: number;
  /** Between judges or repeats: JMS. */
  ofColumns: number;
  /** What is left of both: EMS. */
  ofError: number;
  /** Within subjects, the columns not told apart: WMS. */
  withinSubjects: number;
}

/* Rounding alone leaves less than this share of the greatest value where there is no difference at all. */
const ROUNDING = 1e-13;

/**
 * The two-way analysis of variance without replication (Shrout and Fleiss 1979, Psychol Bull 86:420-428). What rounding
 * alone can leave counts as 0.
 * @param table one row a subject, each with the same columns in the same order
 * @returns too_few below two subjects or two columns (`have` and `needed` count the scarcer of the two)
 * @throws RangeError for rows of different lengths: the caller's fault
 * @example the table of Shrout and Fleiss: 11.24, 32.49, 1.02 and 6.26
 */
export function twoWay(table: readonly (readonly number[])[]): TwoWay | TooFew {
  const columns = table[0]?.length ?? 0;
  const subjects = table.length;
  if (table.some((row) => row.length !== columns)) throw new RangeError("Every row has the same columns.");
  requireFinite(table.flat());
  if (Math.min(subjects, columns) < 2) return tooFew(Math.min(subjects, columns), 2);
  const squares = squaresOf(table);
  const floor = (ROUNDING * Math.max(...table.flat().map(Math.abs))) ** 2;
  const meanSquare = (sum: number, freedom: number) => (sum / freedom <= floor ? 0 : sum / freedom);
  return {
    kind: "two_way",
    subjects,
    columns,
    ofSubjects: meanSquare(columns * squares.subjects, subjects - 1),
    ofColumns: meanSquare(subjects * squares.columns, columns - 1),
    ofError: meanSquare(squares.error, (subjects - 1) * (columns - 1)),
    withinSubjects: meanSquare(squares.error + subjects * squares.columns, subjects * (columns - 1)),
  };
}

function squaresOf(table: readonly (readonly number[])[]) {
  const rowMeans = table.map(meanOf);
  const columnMeans = (table[0] ?? []).map((_, column) => meanOf(table.map((row) => row[column] ?? 0)));
  const grand = meanOf(rowMeans);
  const residuals = table.flatMap((row, index) =>
    row.map((value, column) => value - (rowMeans[index] ?? 0) - ((columnMeans[column] ?? 0) - grand)),
  );
  return {
    subjects: sumOfSquares(rowMeans.map((each) => each - grand)),
    columns: sumOfSquares(columnMeans.map((each) => each - grand)),
    error: sumOfSquares(residuals),
  };
}

const meanOf = (values: readonly number[]) => mean(values) ?? 0;
const sumOfSquares = (values: readonly number[]) => values.reduce((sum, value) => sum + value * value, 0);
