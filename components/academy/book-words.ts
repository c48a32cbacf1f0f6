import type { Answers } from "@/components/wire/answers";
import { notOfferedInWords } from "@/server/domain/rule-books/book-choice";
import { STANDING_WORDS } from "@/server/domain/rule-books/rule-in-words";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";

type Book = Answers["ruleBooks"]["list"]["books"][number];

/** Where a book stands, a line for each thing that is to be known: its year, its version, who confirmed it, whether it is offered. */
export function bookStateInWords(book: Book, zone: string): string[] {
  const on = (atMs: number) => dayInWords(dayOf(atMs, zone), { withYear: true });
  const { saved, confirmation, sampleYear, notOffered } = book;
  return [
    ...(sampleYear === null ? [] : [`Figures of ${sampleYear}`]),
    ...(saved
      ? [
          `Version ${book.version} by ${saved.byName}, ${on(saved.atMs)}${book.basedOnName ? `; a copy of ${book.basedOnName}` : ""}`,
        ]
      : []),
    ...(confirmation ? [`Confirmed as current by ${confirmation.byName}, ${on(confirmation.atMs)}`] : []),
    ...(notOffered ? [`Not offered. ${notOfferedInWords(notOffered)}`] : []),
  ];
}

/** What a book is, in words. */
export const standingInWords = (book: Pick<Book, "standing">) => STANDING_WORDS[book.standing];

/**
 * Who goes by a book.
 * @example bookUseInWords({ athletes: 1, teams: 0 }) // "1 athlete goes by it"
 */
export function bookUseInWords({ athletes, teams }: Book["use"]): string {
  const parts = [
    ...(athletes > 0 ? [`${athletes} ${athletes === 1 ? "athlete" : "athletes"}`] : []),
    ...(teams > 0 ? [`${teams} ${teams === 1 ? "team" : "teams"}`] : []),
  ];
  if (parts.length === 0) return "Nobody goes by it";
  return `${parts.join(" and ")} ${athletes + teams === 1 ? "goes" : "go"} by it`;
}
