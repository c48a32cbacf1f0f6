import type { RuleBook } from "../throwing/rule-book";

/** Why a book cannot be chosen anew; what goes by it already stays with it. */
export const NOT_OFFERED = ["not_confirmed", "archived", "no_limits"] as const;

/** One of {@link NOT_OFFERED}. */
export type NotOffered = (typeof NOT_OFFERED)[number];

/** What decides whether a book is offered. */
export interface BookState {
  book: Pick<RuleBook, "sampleYear" | "rules">;
  isArchived: boolean;
  isConfirmed: boolean;
}

/**
 * Why a book is not offered to athletes and teams, or null when it is: it was put aside; it is a dated sample, or a
 * copy of one, that no admin has confirmed as current; or it limits neither
 * pitches nor innings, and could leave an arm without any number.
 */
export function whyNotOffered({ book, isArchived, isConfirmed }: BookState): NotOffered | null {
  if (isArchived) return "archived";
  if (book.sampleYear !== null && !isConfirmed) return "not_confirmed";
  return book.rules.some(limitsADay) ? null : "no_limits";
}

function limitsADay({ level, kind }: RuleBook["rules"][number]): boolean {
  return level === "limit" && (kind === "pitch_count" || kind === "innings");
}

/**
 * Why a book is not offered, as a sentence.
 * @example notOfferedInWords("archived") // "It was put aside."
 */
export function notOfferedInWords(why: NotOffered): string {
  return WORDS[why];
}

const WORDS: Record<NotOffered, string> = {
  not_confirmed: "It is a sample of a past year, and no admin has confirmed that it is current.",
  archived: "It was put aside.",
  no_limits: "It limits neither the pitches nor the innings of a day.",
};
