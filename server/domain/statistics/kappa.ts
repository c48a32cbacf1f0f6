import { normalReach } from "./distributions";
import type { Weights } from "./kappa-weights";
import { requireFinite } from "./require-finite";
import { type TooFew, tooFew } from "./too-few";

/** Agreement of two judges beyond chance. */
export interface Kappa {
  kind: "kappa";
  n: number;
  /** Weighted share of agreement, as seen and as chance alone would bring. */
  observed: number;
  expected: number;
  /** 1 for full agreement, 0 for chance; null where chance alone agrees in full (both used one category). */
  kappa: number | null;
  standardError: number | null;
  lower: number | null;
  upper: number | null;
}

/**
 * Cohen's kappa with weights (Cohen 1968, Psychol Bull 70:213-220), its large-sample standard error (Fleiss, Cohen and
 * Everitt 1969, Psychol Bull 72:323-327) and the normal interval, cut off at 1.
 * @param counts how often the first judge said the row while the second said the column
 * @param weights of agreement, of the same size: `sameOrNot`, `linearWeights`, `quadraticWeights`, `agreementOf`
 * @returns too_few without a pair
 * @throws RangeError for tables that are not square or not of one size, a count that is none or a weight outside 0 to 1: the caller's fault
 * @example the table of Cohen 1968 with its weights: 0.348, standard error 0.0755
 */
export function kappa(
  counts: readonly (readonly number[])[],
  weights: Weights,
  level = 0.95,
): Kappa | TooFew {
  requireTables(counts, weights);
  const reach = normalReach(level);
  const n = sum(counts.flat());
  if (n === 0) return tooFew(0, 1);
  const shares = counts.map((row) => row.map((count) => count / n));
  const rows = shares.map(sum);
  const columns = rows.map((_, column) => sum(shares.map((row) => row[column] ?? 0)));
  const observed = sumOf(shares, (share, row, column) => share * at(weights, row, column));
  const expected = sumOf(
    weights,
    (weight, row, column) => weight * (rows[row] ?? 0) * (columns[column] ?? 0),
  );
  const isOneCategory = rows.some((share, index) => share === 1 && columns[index] === 1);
  const rest = 1 - expected;
  if (isOneCategory || rest <= ROUNDING) return { kind: "kappa", n, observed, expected, ...UNDEFINED };
  const value = (observed - expected) / rest;
  const spread = spreadOf({ shares, rows, columns, weights }, value, expected);
  const standardError = Math.sqrt(Math.max(0, spread) / n) / rest;
  const lower = value - reach * standardError;
  const upper = Math.min(1, value + reach * standardError);
  return { kind: "kappa", n, observed, expected, kappa: value, standardError, lower, upper };
}

const ROUNDING = 1e-12;
const UNDEFINED = { kappa: null, standardError: null, lower: null, upper: null } as const;

interface Table {
  shares: Weights;
  rows: readonly number[];
  columns: readonly number[];
  weights: Weights;
}

/** The variance of one pair's share in kappa, by (1 - expected)²; eq. 9 of Fleiss, Cohen and Everitt (from memory). */
function spreadOf({ shares, rows, columns, weights }: Table, value: number, expected: number): number {
  const ofRow = weights.map((row) => sum(row.map((weight, column) => weight * (columns[column] ?? 0))));
  const ofColumn = columns.map((_, column) =>
    sum(weights.map((row, index) => (row[column] ?? 0) * (rows[index] ?? 0))),
  );
  const middle = value - expected * (1 - value);
  return sumOf(shares, (share, row, column) => {
    const chance = ((ofRow[row] ?? 0) + (ofColumn[column] ?? 0)) * (1 - value);
    return share * (at(weights, row, column) - chance - middle) ** 2;
  });
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const at = (table: Weights, row: number, column: number) => table[row]?.[column] ?? 0;
const sumOf = (table: Weights, cell: (value: number, row: number, column: number) => number) =>
  sum(table.flatMap((row, index) => row.map((value, column) => cell(value, index, column))));

function requireTables(counts: readonly (readonly number[])[], weights: Weights): void {
  const rows = [...counts, ...weights];
  const isSquare = counts.length === weights.length && rows.every((row) => row.length === counts.length);
  if (!isSquare) throw new RangeError("Counts and weights are square tables of one size.");
  requireFinite(rows.flat());
  const isCount = (count: number) => Number.isInteger(count) && count >= 0;
  if (!counts.flat().every(isCount)) throw new RangeError("A count is a whole number from 0 up.");
  const isShare = (weight: number) => weight >= 0 && weight <= 1;
  if (!weights.flat().every(isShare)) throw new RangeError("A weight of agreement lies from 0 to 1.");
}

/**
 * How often the first judge said one category while the second said another.
 * @param pairs what both said of the same thing, as indices of the categories
 * @param categories how many there are
 * @throws RangeError for an index that is no category: the caller's fault
 * @example crossTable([[0, 0], [0, 1], [1, 1]], 2) // [[1, 1], [0, 1]]
 */
export function crossTable(pairs: readonly (readonly [number, number])[], categories: number): number[][] {
  const table = Array.from({ length: categories }, () => new Array<number>(categories).fill(0));
  for (const [first, second] of pairs) {
    const row = table[first];
    if (row?.[second] === undefined) throw new RangeError(`No category ${first} or ${second}.`);
    row[second] += 1;
  }
  return table;
}
