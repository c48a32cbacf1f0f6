import { type ArmQuestion, type PitchesAllowed, pitchesAllowed } from "../throwing/pitches-allowed";
import type { RuleBook } from "../throwing/rule-book";
import { limitInWords } from "../throwing/why";
import type { CalendarDay } from "../time/calendar-day";

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

const room = ({ pitches }: PitchesAllowed) => pitches ?? Number.POSITIVE_INFINITY;
