import { z } from "zod";
import { levelInWords } from "./amount-in-words";
import type { SeriesKind } from "./observation";

/** The ways in which a measure can be better. */
export const WANTED_WAYS = ["more", "less", "nearer"] as const;
export type WantedWay = (typeof WANTED_WAYS)[number];

/** Which way a value is better: more of it, less of it, nearer to a value, or nobody said. */
export type WantedDirection = StatedDirection | { kind: "unstated" };

/** A direction that somebody said; what a value is to be nearer to, in the unit of its kind. */
export const statedDirectionSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("more") }),
  z.strictObject({ kind: z.literal("less") }),
  z.strictObject({ kind: z.literal("nearer"), to: z.number().min(-1000).max(1000) }),
]);
export type StatedDirection = z.infer<typeof statedDirectionSchema>;

/** A direction in the two columns it is kept in; both null where nobody said. */
export interface DirectionColumns {
  wanted: WantedWay | null;
  /** What nearer is meant of, and null with any other way. */
  wantedTo: number | null;
}

/** @example directionColumns({ kind: "nearer", to: 0 }) // { wanted: "nearer", wantedTo: 0 } */
export function directionColumns(stated: StatedDirection | null): DirectionColumns {
  return { wanted: stated?.kind ?? null, wantedTo: stated?.kind === "nearer" ? stated.to : null };
}

/** The reverse of {@link directionColumns}; nearer to nothing says nothing. */
export function statedDirection({ wanted, wantedTo }: DirectionColumns): StatedDirection | null {
  if (wanted === null) return null;
  if (wanted !== "nearer") return { kind: wanted };
  return wantedTo === null ? null : { kind: "nearer", to: wantedTo };
}

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

/**
 * A direction as it is chosen and read.
 * @example directionInWords({ kind: "nearer", to: 0 }, "trunk_tilt_side") // "nearer to 0°"
 */
export function directionInWords(stated: StatedDirection, of: SeriesKind): string {
  return stated.kind === "nearer" ? `nearer to ${levelInWords(of, stated.to)}` : stated.kind;
}
