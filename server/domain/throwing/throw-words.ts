import type { PainKind } from "./pain";
import type { ThrowKind } from "./throw-entry";

/** The kinds of throwing as they are written on a screen. */
export const THROW_KIND_WORDS: Record<ThrowKind, string> = {
  game: "Game",
  bullpen: "Bullpen",
  lesson: "Lesson",
  live_at_bats: "Live at-bats",
  showcase: "Showcase",
  flat_ground: "Flat ground",
  long_toss: "Long toss",
  weighted_balls: "Weighted balls",
};

/** What stops an arm, as it is written on a screen. */
export const PAIN_KIND_WORDS: Record<PainKind, string> = {
  pain: "Pain",
  unusual_fatigue: "Unusual fatigue",
};

/**
 * A number of throws of a kind, for a log line or a button. Kinds off a mound are pitches, the others throws.
 * @example throwsInWords("game", 35) // "35 pitches, game"
 * @example throwsInWords("long_toss", 0) // "nothing thrown, long toss"
 */
export function throwsInWords(kind: ThrowKind, count: number): string {
  const words = THROW_KIND_WORDS[kind].toLowerCase();
  if (count === 0) return `nothing thrown, ${words}`;
  const noun = OFF_THE_MOUND.includes(kind) ? "throw" : "pitch";
  return `${count} ${count === 1 ? noun : PLURALS[noun]}, ${words}`;
}

const OFF_THE_MOUND: readonly ThrowKind[] = ["flat_ground", "long_toss", "weighted_balls"];

const PLURALS = { pitch: "pitches", throw: "throws" } as const;
