import { z } from "zod";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** Every kind of throwing the log knows. Order is the order of the log's own choices. */
export const THROW_KINDS = [
  "game",
  "bullpen",
  "lesson",
  "live_at_bats",
  "showcase",
  "flat_ground",
  "long_toss",
  "weighted_balls",
] as const;

/** One of {@link THROW_KINDS}. */
export type ThrowKind = (typeof THROW_KINDS)[number];

/** Mound work outside games: whether it counts is the academy's reading of the book, not the book's own word. */
export const MOUND_WORK_KINDS = ["bullpen", "lesson"] as const satisfies readonly ThrowKind[];

const GAME_LIKE_KINDS: readonly ThrowKind[] = ["game", "live_at_bats", "showcase"];

/**
 * How an academy reads the book and its own log.
 * `countedKinds`: the mound work that counts as pitches toward the daily number and rest.
 * `askAfterDays`: more days than this without any report, and the screen says so and tells the coach to ask.
 */
export const throwReadingSchema = z.strictObject({
  countedKinds: z.array(z.enum(MOUND_WORK_KINDS)).readonly(),
  askAfterDays: z.int().min(1).max(60),
});

/** See {@link throwReadingSchema}. */
export type ThrowReading = z.infer<typeof throwReadingSchema>;

/**
 * The reading an academy starts with: bullpens and lessons on a mound count like games. The published guideline
 * counts games only; counting all mound work is the cautious reading. Seven days of silence is common practice,
 * no source.
 */
export const CAUTIOUS_READING: ThrowReading = { countedKinds: ["bullpen", "lesson"], askAfterDays: 7 };

/**
 * Whether throws of this kind count toward the daily number, rest and days in a row.
 * Games, live at-bats and showcases always do; bullpens and lessons as the reading says; flat ground, long toss
 * and weighted balls are logged and shown, never counted.
 * @example countsTowardLimit("bullpen", CAUTIOUS_READING) // true
 */
export function countsTowardLimit(kind: ThrowKind, reading: Pick<ThrowReading, "countedKinds">): boolean {
  return GAME_LIKE_KINDS.includes(kind) || reading.countedKinds.some((counted) => counted === kind);
}

/** Whether throws of this kind are taken for a game: a game, live at-bats, a showcase. */
export function isGameLike(kind: ThrowKind): boolean {
  return GAME_LIKE_KINDS.includes(kind);
}

/**
 * One row of the throw log. Rows are never edited: a correction is a new row whose `replacesId` is the row it
 * corrects, with its own day and number; a throw that never happened is corrected to 0 pitches.
 * A row is corrected at most once (correct the correction); should two rows name the same one, both count.
 */
export interface ThrowEntry {
  id: string;
  athleteId: string;
  /** Calendar day of the athlete's home site. */
  thrownOn: CalendarDay;
  kind: ThrowKind;
  /** Throws for the kinds that do not count; 0 or more. */
  pitches: number;
  /** Outs got as the pitcher, in thirds of an inning; null where nobody said. */
  outs: number | null;
  /** Innings caught, one begun counts as one; null where nobody said. */
  inningsCaught: number | null;
  /** The count before the first pitch to the last batter; null where nobody said. */
  pitchesAtLastBatter: number | null;
  /** Announced intentional walks, for which no pitch was thrown. */
  intentionalWalks: number;
  /** The athlete's team it was thrown for; null for none, and where nobody said. */
  teamId: string | null;
  replacesId: string | null;
  reportedAtMs: number;
}

/** Throwing that is coming: a game on the family's calendar or a booked session, at its planned number. */
export interface PlannedThrows {
  id: string;
  plannedOn: CalendarDay;
  kind: ThrowKind;
  /** 0 for a session without throws; such a one limits nothing. */
  pitches: number;
  /** The athlete's team it is planned for, or null. */
  teamId: string | null;
}

/** The rows that no other given row replaces, in the order given. Chains of corrections leave only the last. */
export function currentEntries<Entry extends ThrowEntry>(entries: readonly Entry[]): Entry[] {
  const replacedIds = new Set<string>();
  for (const { replacesId } of entries) if (replacesId !== null) replacedIds.add(replacesId);
  if (replacedIds.size === 0) return [...entries];
  return entries.filter((entry) => !replacedIds.has(entry.id));
}
