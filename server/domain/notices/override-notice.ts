import type { CalendarDay } from "../time/calendar-day";
import { dayInWords } from "../time/words";
import type { NoticeWords } from "./notice";

/** An override as it is told: who, what, and what the books say of the same day. */
export interface ToldOverride {
  name: string;
  day: CalendarDay;
  /** 0 when an earlier override of the day was taken back. */
  pitches: number;
  /** What the books leave on that day; null where they have no published limit. */
  byTheBook: number | null;
  reason: string;
  byName: string;
}

/** That an admin overrode a limit for one day, or took that back; never worded as the book's own number. */
export function overrideNotice(told: ToldOverride): NoticeWords {
  const day = dayInWords(told.day, { withYear: true });
  const book = told.byTheBook === null ? "no published limit" : `at most ${told.byTheBook}`;
  const isBack = told.pitches === 0;
  return {
    kind: "limit_overridden",
    subject: isBack
      ? `Override taken back for ${told.name}, ${day}`
      : `Limit overridden for ${told.name}, ${day}`,
    body: [
      isBack
        ? `${told.byName} took back the override of ${told.name}'s limit on ${day}. The book holds again: ${book}.`
        : `${told.byName} overrode the limit of ${told.name} on ${day}: the academy goes by ${told.pitches} pitches for that day. This is not the book's number. By the book it is ${book}.`,
      `The reason given: ${told.reason}`,
      "Nothing overrides pain: once any is reported, all throwing stops. The league's own rules, the athlete's physician and athletic trainer come first.",
    ].join("\n\n"),
  };
}
