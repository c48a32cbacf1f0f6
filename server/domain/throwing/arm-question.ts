import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { ArmRecord } from "./day-load";
import type { Advice, LimitReason } from "./limit-reason";
import type { PainStop } from "./pain";
import type { RuleBook } from "./rule-book";
import type { ThrowKind } from "./throw-entry";

/** `pitches`: the day's whole total that an admin let the arm reach, whatever the books say. */
export interface LimitOverride {
  id: string;
  day: CalendarDay;
  pitches: number;
}

/** What is asked about one arm on one day. */
export interface ArmQuestion extends ArmRecord {
  bornOn: CalendarDay;
  /** The athlete's own first, then those of the teams they pitch for. Each weighs all throws of the arm. */
  books: readonly [RuleBook, ...RuleBook[]];
  /** What admins let the arm reach on a day; of several for one day the last stands. */
  overrides: readonly LimitOverride[];
  day: CalendarDay;
  /** The day at the athlete's home site: silence is counted up to it, never into days that are still to come. */
  today: CalendarDay;
  pain: PainStop | null;
  /**
   * The last day anything was said of, be it that nothing was thrown; the day the athlete joined when nothing ever
   * was. A later entry in the log moves it on by itself.
   */
  lastReportedOn: CalendarDay;
  /** What is to be thrown: a second game is held where a book has one a day. Left out: anything but a game. */
  kind?: ThrowKind | null;
}

/**
 * At most how many pitches the books leave, never a permission.
 * - `at_most`: `pitches` more on this day, 0 when what is already on the day uses it up, null where only innings are
 *   counted: then `outs` is the number.
 * - `resting`: 0, because other days need this one free of pitching, or because of catching on it.
 * - `pain`: 0 and no first free day; only a clearance ends it.
 * - `no_published_limit`: `pitches` is null; the age on the day decides, and nothing else is looked at.
 */
export interface PitchesAllowed {
  status: "at_most" | "resting" | "pain" | "no_published_limit";
  day: CalendarDay;
  pitches: number | null;
  /** At most how many outs more, by innings rules; null where none holds, and under an override. */
  outs: number | null;
  /** The id of the book whose number this is, the strictest; null under pain and without a published limit. */
  boundBy: string | null;
  /** Its name when there are several books to tell apart, else null. */
  boundByName: string | null;
  /** The first later day with room for at least one pitch given all that is planned; null unless `pitches` is 0. */
  firstFreeDay: CalendarDay | null;
  /** The last day anything was said of when that is longer ago than the academy's span, else null: ask. */
  nothingReportedSince: CalendarDay | null;
  /**
   * In order of what binds: on a resting day only what makes it one, otherwise all that goes into the number; last what
   * holds no number and has to be said.
   */
  reasons: LimitReason[];
  /** What rules that only advise say of the day; they change no number. */
  warnings: Advice[];
}
