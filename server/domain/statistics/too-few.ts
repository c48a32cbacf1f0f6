/** What a computation answers when the data cannot carry it: how many there are, and how many it takes. */
export interface TooFew {
  kind: "too_few";
  have: number;
  needed: number;
}

/**
 * The answer of a computation that has not enough to go on.
 * @example tooFew(2, 3) // { kind: "too_few", have: 2, needed: 3 }
 */
export function tooFew(have: number, needed: number): TooFew {
  return { kind: "too_few", have, needed };
}
