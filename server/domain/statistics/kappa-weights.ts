/** What each pair of judgements counts as agreement: 1 for the same, less the further apart; a square table. */
export type Weights = readonly (readonly number[])[];

const square = (size: number, cell: (apart: number) => number): Weights =>
  Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (__, column) => cell(Math.abs(row - column))),
  );

/**
 * The same or not: Cohen's plain kappa (1960, Educ Psychol Meas 20:37-46).
 * @example sameOrNot(2) // [[1, 0], [0, 1]]
 */
export function sameOrNot(size: number): Weights {
  return square(size, (apart) => (apart === 0 ? 1 : 0));
}

/**
 * By the distance: 1 - |i - j| / (k - 1) (Cicchetti and Allison 1971, Am J EEG Technol 11:101-109).
 * @example linearWeights(3)[0] // [1, 0.5, 0]
 */
export function linearWeights(size: number): Weights {
  return square(size, (apart) => (apart === 0 ? 1 : 1 - apart / (size - 1)));
}

/**
 * By the squared distance: 1 - (i - j)² / (k - 1)² (Fleiss and Cohen 1973, Educ Psychol Meas 33:613-619), under which
 * kappa is near the intraclass correlation.
 * @example quadraticWeights(3)[0] // [1, 0.75, 0]
 */
export function quadraticWeights(size: number): Weights {
  return square(size, (apart) => (apart === 0 ? 1 : 1 - (apart / (size - 1)) ** 2));
}

/**
 * Weights of agreement from weights of disagreement, 0 for the same (Cohen 1968, Psychol Bull 70:213-220): the worst
 * pair counts nothing.
 * @returns all 1 where no pair is a disagreement
 * @example agreementOf([[0, 3], [3, 0]]) // [[1, 0], [0, 1]]
 */
export function agreementOf(disagreement: readonly (readonly number[])[]): Weights {
  const worst = Math.max(0, ...disagreement.flat());
  return disagreement.map((row) => row.map((cell) => (worst === 0 ? 1 : 1 - cell / worst)));
}
