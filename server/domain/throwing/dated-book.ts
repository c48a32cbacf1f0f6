import { dayNumber } from "@/server/domain/time/day-number";
import type { Rule } from "./rule";
import type { RuleBook } from "./rule-book";
import type { DatedRule } from "./rule-hold";

/** A book with its days as numbers, and how far its limits reach. */
export interface DatedBook {
  book: RuleBook;
  limits: readonly DatedRule[];
  advice: readonly DatedRule[];
  /** The longest rest a pitch count of the book asks for, in days. */
  longestRestDays: number;
  /** How many days before or after a day its limits look. */
  reachDays: number;
}

/* Worked out once for a book, however many arms go by it; the book is data and never changes. */
const KNOWN = new WeakMap<RuleBook, DatedBook>();

/** The book in numbers. */
export function datedBook(book: RuleBook): DatedBook {
  const known = KNOWN.get(book);
  if (known) return known;
  const rules = book.rules.map((rule) => ({
    rule,
    from: dayNumber(rule.effectiveFrom),
    until: rule.effectiveUntil === null ? Number.POSITIVE_INFINITY : dayNumber(rule.effectiveUntil),
  }));
  const limits = rules.filter(({ rule }) => rule.level === "limit");
  const made: DatedBook = {
    ...{ book, limits, advice: rules.filter(({ rule }) => rule.level === "advice") },
    longestRestDays: Math.max(0, ...book.rules.map(longestRestDays)),
    reachDays: Math.max(1, ...limits.map(({ rule }) => reachDays(rule))),
  };
  KNOWN.set(book, made);
  return made;
}

function longestRestDays(rule: Rule): number {
  if (rule.kind !== "pitch_count") return 0;
  return Math.max(...rule.ageBands.flatMap((band) => band.restBands.map((rest) => rest.restDays)));
}

/** How many days away another day can be and still hold one, by this rule. */
export function reachDays(rule: Rule): number {
  switch (rule.kind) {
    case "pitch_count":
      return longestRestDays(rule);
    case "innings":
      return Math.max(1, rule.rolling?.days ?? 0);
    case "days_in_a_row":
      return rule.maxDays;
    case "total":
      return "days" in rule.over ? rule.over.days - 1 : rule.over.months * 31;
    case "months_off":
      return 400;
    case "one_game_a_day":
    case "catching":
      return 0;
  }
}
