import { rangeForAge } from "./age-ranges";
import type { DatedBook } from "./dated-book";
import { catchingHolds, daysInARowHolds, oneGameHolds } from "./hold-day-rules";
import { inningsHolds } from "./hold-innings";
import { pitchCountHolds } from "./hold-pitch-count";
import { totalHolds } from "./hold-total";
import { type Asked, type DatedRule, type Hold, holdsOn } from "./rule-hold";

/**
 * What one book leaves an arm on one day. `pitches` and `outs` are at most that many more, Infinity where no rule holds
 * them; no out left leaves no pitch. `restsUntil`: the latest first free day of the rests that hold, as a day number.
 */
export interface BookAnswer {
  dated: DatedBook;
  status: "at_most" | "resting" | "no_published_limit";
  pitches: number;
  outs: number;
  restsUntil: number;
  holds: readonly Hold[];
}

/** Asks every limit of a book. A book that has no count and no innings for the age then says nothing at all. */
export function bookAnswer(dated: DatedBook, asked: Asked): BookAnswer {
  if (!covers(dated, asked)) {
    const open = { pitches: Number.POSITIVE_INFINITY, outs: Number.POSITIVE_INFINITY };
    return { dated, status: "no_published_limit", ...open, restsUntil: 0, holds: [] };
  }
  const holds: Hold[] = [];
  for (const rule of dated.limits) addHolds(rule, asked, dated.longestRestDays, holds);
  const { status, pitches, outs, restsUntil } = tightest(holds);
  return { dated, status, pitches, outs, restsUntil, holds };
}

/** Everything one rule has to say of a day, whatever its level. */
export function holdsOfRule(rule: DatedRule, asked: Asked, longestRestDays: number): Hold[] {
  const holds: Hold[] = [];
  addHolds(rule, asked, longestRestDays, holds);
  return holds;
}

/** The numbers that holds come to. */
export function tightest(holds: readonly Hold[]): Omit<BookAnswer, "dated" | "holds"> {
  let pitches = Number.POSITIVE_INFINITY;
  let outs = Number.POSITIVE_INFINITY;
  let restsUntil = 0;
  let rests = false;
  for (const hold of holds) {
    if (hold.on === "pitches") pitches = Math.min(pitches, hold.most);
    else if (hold.on === "outs") outs = Math.min(outs, hold.most);
    else if (hold.on === "rest") {
      rests = true;
      restsUntil = Math.max(restsUntil, hold.freeOn);
    }
  }
  if (rests || outs === 0) pitches = 0;
  if (pitches === 0 && outs !== Number.POSITIVE_INFINITY) outs = 0;
  return { status: rests ? "resting" : "at_most", pitches, outs, restsUntil };
}

function covers({ limits }: DatedBook, { ageAt, day }: Asked): boolean {
  for (const dated of limits) {
    const { rule } = dated;
    if (rule.kind !== "pitch_count" && rule.kind !== "innings") continue;
    if (holdsOn(dated, day) && rangeForAge<{ ageMin: number; ageMax: number }>(rule.ageBands, ageAt(day))) {
      return true;
    }
  }
  return false;
}

function addHolds(dated: DatedRule, asked: Asked, longestRestDays: number, holds: Hold[]): void {
  const { rule, from, until } = dated;
  switch (rule.kind) {
    case "pitch_count":
      pitchCountHolds({ rule, from, until }, asked, longestRestDays, holds);
      break;
    case "innings":
      inningsHolds({ rule, from, until }, asked, holds);
      break;
    case "days_in_a_row":
      daysInARowHolds({ rule, from, until }, asked, holds);
      break;
    case "one_game_a_day":
      oneGameHolds({ rule, from, until }, asked, holds);
      break;
    case "catching":
      catchingHolds({ rule, from, until }, asked, holds);
      break;
    case "total":
      totalHolds({ rule, from, until }, asked, holds);
      break;
    case "months_off":
      // Never a limit: what it has to say is said where advice is.
      break;
  }
}
