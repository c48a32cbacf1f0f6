import { type ArmQuestion, type PitchesAllowed, pitchesAllowed } from "../throwing/pitches-allowed";
import type { RuleBook } from "../throwing/rule-book";
import { limitInWords } from "../throwing/why";
import { addDays, type CalendarDay } from "../time/calendar-day";

/** A day on which another book would have answered otherwise. */
export interface BookDifference {
  day: CalendarDay;
  /** What the books in force said, and what they would have said with the other in place of the first. */
  before: string;
  after: string;
  /** Whether the other leaves less, or more; an answer with no published limit leaves most. */
  change: "stricter" | "looser";
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
  const others = arm.books.slice(1);
  return days.flatMap((day) => {
    const morning = {
      ...arm,
      ...{ day, today: day, planned: [], overrides: [], pain: null },
      entries: arm.entries.filter((entry) => entry.thrownOn < day),
    };
    const before = pitchesAllowed(morning);
    const after = pitchesAllowed({ ...morning, books: [book, ...others] });
    if (room(before) === room(after)) return [];
    const change = room(after) < room(before) ? "stricter" : "looser";
    return [{ day, change, before: limitInWords(before), after: limitInWords(after) }];
  });
}

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

const room = ({ pitches }: PitchesAllowed) => pitches ?? Number.POSITIVE_INFINITY;
