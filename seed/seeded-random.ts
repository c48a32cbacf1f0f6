/** A generator of numbers that look random and are always the same for one seed. */
export interface Random {
  /** From 0 up to, not including, 1. */
  next: () => number;
  /** A whole number from `min` to `max`, both included. */
  int: (min: number, max: number) => number;
  /** From `min` up to `max`. */
  between: (min: number, max: number) => number;
  /** True in this share of cases. */
  chance: (share: number) => boolean;
  /** @throws RangeError when there is nothing to pick from */
  pick: <Value>(values: readonly Value[]) => Value;
  shuffled: <Value>(values: readonly Value[]) => Value[];
  /** A generator of its own, which takes nothing from this one: what one part draws never moves another. */
  fork: (label: string) => Random;
}

/**
 * A generator for a seed. Method: the text is hashed to 32 bits (FNV-1a), which start a mulberry32 sequence; fit for
 * inventing things, not for secrets.
 */
export function seededRandom(seed: string): Random {
  let state = hashOf(seed);
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const int = (min: number, max: number) => min + Math.floor(next() * (max - min + 1));
  return {
    next,
    int,
    between: (min, max) => min + next() * (max - min),
    chance: (share) => next() < share,
    pick: (values) => {
      const [value] = values.slice(int(0, values.length - 1));
      if (value === undefined) throw new RangeError("There is nothing to pick from.");
      return value;
    },
    shuffled: (values) =>
      values
        .map((value) => ({ value, place: next() }))
        .sort((a, b) => a.place - b.place)
        .map(({ value }) => value),
    fork: (label) => seededRandom(`${seed}/${label}`),
  };
}

function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return hash >>> 0;
}
