import { seededDraws, shuffledBy } from "@/server/domain/statistics/seeded-draws";

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

/** A generator for a seed: see {@link seededDraws}. */
export function seededRandom(seed: string): Random {
  const next = seededDraws(seed);
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
    shuffled: (values) => shuffledBy(next, values),
    fork: (label) => seededRandom(`${seed}/${label}`),
  };
}
