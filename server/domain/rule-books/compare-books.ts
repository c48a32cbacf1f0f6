import { armStrip, type StripDay } from "../throwing/arm-strip";
import { type ArmQuestion, pitchesAllowed } from "../throwing/pitches-allowed";
import type { RuleBook } from "../throwing/rule-book";
import { limitInWords } from "../throwing/why";
import { addDays, type CalendarDay } from "../time/calendar-day";

/** How one answer stands to another: it leaves less, or more, or less of one thing and more of another. */
export const BOOK_CHANGES = ["stricter", "looser", "other"] as const;

/** A day on which another book would have answered otherwise. */
export interface BookDifference {
  day: CalendarDay;
  /** What the books in force said, and what they would have said with the other in place of the first. */
  before: string;
  after: string;
  /** An answer without a number of pitches, or of outs, leaves most of them. */
  change: (typeof BOOK_CHANGES)[number];
}

/**
 * The days on which an arm's answer would have been another with `book` as its first book, by what had been thrown
 * before each day: plans, overrides and pain are left out of both, since no book changes them.
 */
export function daysThatDiffer(
  arm: Omit<ArmQuestion, "day" | "today">,
  book: RuleBook,
  days: readonly CalendarDay[],
): BookDifference[] {
  const books: ArmQuestion["books"] = [book, ...arm.books.slice(1)];
  return days.flatMap((day) => {
    const entries = arm.entries.filter((entry) => entry.thrownOn < day);
    const morning = { ...arm, day, today: day, planned: [], overrides: [], pain: null, entries };
    const change = changeBetween(leftOn(day, morning), leftOn(day, { ...morning, books }));
    if (!change) return [];
    const before = limitInWords(pitchesAllowed(morning));
    return [{ day, change, before, after: limitInWords(pitchesAllowed({ ...morning, books })) }];
  });
}

function leftOn(day: CalendarDay, morning: ArmQuestion): StripDay | undefined {
  return armStrip(morning, { from: day, to: day })[0];
}

function changeBetween(before: StripDay | undefined, after: StripDay | undefined) {
  const pitches = Math.sign(room(after?.pitches) - room(before?.pitches));
  const outs = Math.sign(room(after?.outs) - room(before?.outs));
  if (pitches === 0 && outs === 0) return null;
  if (pitches <= 0 && outs <= 0) return "stricter";
  return pitches >= 0 && outs >= 0 ? "looser" : "other";
}

/** More than any book counts: two answers without a number are the same. */
const room = (number: number | null | undefined) => number ?? Number.MAX_SAFE_INTEGER;

/** Days one after another on which both answers stay the same. */
export interface DifferingSpan extends Omit<BookDifference, "day"> {
  fromDay: CalendarDay;
  toDay: CalendarDay;
  days: number;
}

/**
 * Differences with those of neighbouring days put together where both answers are the same.
 * @param differences of one arm, in the order of days
 */
export function differingSpans(differences: readonly BookDifference[]): DifferingSpan[] {
  const spans: DifferingSpan[] = [];
  for (const { day, ...answers } of differences) {
    const last = spans.at(-1);
    const goesOn = last?.before === answers.before && last.after === answers.after;
    if (last && goesOn && addDays(last.toDay, 1) === day) {
      last.toDay = day;
      last.days += 1;
    } else {
      spans.push({ ...answers, fromDay: day, toDay: day, days: 1 });
    }
  }
  return spans;
}
