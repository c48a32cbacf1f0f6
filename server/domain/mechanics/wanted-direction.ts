import type { SeriesKind } from "./observation";

/** Which way a value is better: more of it, less of it, nearer to a value, or nobody said. */
export type WantedDirection =
  | { kind: "more" }
  | { kind: "less" }
  | { kind: "nearer"; to: number }
  | { kind: "unstated" };

/**
 * Which way is better. More of a judgement always is. Of a measure it is what the correction asks for, else what the
 * checkpoint does; where neither says so nothing is guessed: a longer stride is not better because it is longer.
 * @example wantedDirection("judgement", null, null) // { kind: "more" }
 * @example wantedDirection("stride_length", null, null) // { kind: "unstated" }
 */
export function wantedDirection(
  of: SeriesKind,
  correction: WantedDirection | null,
  checkpoint: WantedDirection | null,
): WantedDirection {
  if (of === "judgement") return { kind: "more" };
  const stated = [correction, checkpoint].find((each) => each !== null && each.kind !== "unstated");
  return stated ?? { kind: "unstated" };
}

/**
 * A value on a scale on which more is better, in the same unit; as it is where nobody said which way is better.
 * @example towardBetter({ kind: "nearer", to: 0 }, -12) // -12: twelve off
 */
export function towardBetter(wanted: WantedDirection, value: number): number {
  switch (wanted.kind) {
    case "more":
    case "unstated":
      return value;
    case "less":
      return -value;
    case "nearer":
      return -Math.abs(value - wanted.to);
  }
}

/**
 * The words that follow an amount of change: "7° more", "7° nearer".
 * @param change plus toward better, as on the scale of {@link towardBetter}
 */
export function wayInWords(wanted: WantedDirection, change: number): string {
  const isPlus = change > 0;
  if (wanted.kind === "nearer") return isPlus ? "nearer" : "farther off";
  return isPlus === (wanted.kind !== "less") ? "more" : "less";
}
