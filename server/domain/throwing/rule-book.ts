import { z } from "zod";
import { ageOn, type CalendarDay, isCalendarDay } from "@/server/domain/time/calendar-day";
import type { AgeBand } from "./age-band";
import { ageYears, rangeForAge } from "./age-ranges";
import { type Rule, type RuleKind, type RuleOf, ruleSchema } from "./rule";

/** One line of published advice for an age range, in plain words. Advice is shown; it never changes a number. */
export const adviceLineSchema = z.strictObject({
  ageMin: ageYears,
  ageMax: ageYears,
  words: z.string().min(1).max(500),
  source: z.string().min(1).max(500),
});

/** See {@link adviceLineSchema}. */
export type AdviceLine = z.infer<typeof adviceLineSchema>;

/**
 * How far a book can be relied on: published and in force; a dated sample that an admin has to confirm as current;
 * published guidance that is somebody's opinion or no longer in force; a copy that the academy made its own.
 */
export const STANDINGS = ["published", "sample", "opinion", "own"] as const;

/** One of {@link STANDINGS}. */
export type Standing = (typeof STANDINGS)[number];

/**
 * Which age a book goes by: the completed years on the day, or the league age, which is the age on a cut-off day of the
 * calendar year of the day (`yearOffset` -1: of the year before).
 */
export const ageBasisSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("on_day") }),
  z.strictObject({
    kind: z.literal("league_age"),
    cutOff: z.string().refine((text) => isCalendarDay(`2027-${text}`), "must be a day of every year, MM-DD"),
    yearOffset: z.union([z.literal(0), z.literal(-1)]),
  }),
]);

/** See {@link ageBasisSchema}. */
export type AgeBasis = z.infer<typeof ageBasisSchema>;

/**
 * A rule book: dated rules with their source. A day whose age none of its pitch counts or innings covers has no
 * published limit. `sampleYear`: the year its figures were read in, where they have to be confirmed as current.
 * `notes` tell where its sources contradict each other.
 */
export const ruleBookSchema = z.strictObject({
  id: z.string().min(1).max(80),
  name: z.string().min(1).max(120),
  source: z.string().min(1).max(500),
  standing: z.enum(STANDINGS),
  sampleYear: z.int().min(1900).max(2200).nullable(),
  ageBasis: ageBasisSchema,
  rules: z.array(ruleSchema).min(1).max(60),
  advice: z.array(adviceLineSchema).max(200),
  notes: z.array(z.string().min(1).max(1000)).max(40),
});

/** See {@link ruleBookSchema}. */
export type RuleBook = z.infer<typeof ruleBookSchema>;

/** Whether a rule is in force on a day. */
export function isInForce(rule: Pick<Rule, "effectiveFrom" | "effectiveUntil">, day: CalendarDay): boolean {
  return rule.effectiveFrom <= day && (rule.effectiveUntil === null || day < rule.effectiveUntil);
}

/** The rules of one kind, in the book's order, whenever they are in force. */
export function rulesOf<Kind extends RuleKind>(book: RuleBook, kind: Kind): RuleOf<Kind>[] {
  return book.rules.filter((rule): rule is RuleOf<Kind> => rule.kind === kind);
}

/** The first day any rule of the book is in force. */
export function bookInForceFrom(book: RuleBook): CalendarDay {
  return book.rules.map((rule) => rule.effectiveFrom).sort()[0] ?? "0000-01-01";
}

/**
 * The age a book goes by on a day, in completed years; negative before birth.
 * @example league age with cut-off 31 August, born on 1 Sep 2014, on any day of 2026: 11
 */
export function ageByBook(basis: AgeBasis, bornOn: CalendarDay, day: CalendarDay): number {
  if (basis.kind === "on_day") return ageOn(bornOn, day);
  const year = Number(day.slice(0, 4)) + basis.yearOffset;
  return ageOn(bornOn, `${String(year).padStart(4, "0")}-${basis.cutOff}`);
}

/** The pitch counts in force on a day for an age, or null outside the ages the book covers: never a guess. */
export function bandForAge(book: RuleBook, age: number, day: CalendarDay): AgeBand | null {
  for (const rule of rulesOf(book, "pitch_count")) {
    const band = rule.level === "limit" && isInForce(rule, day) ? rangeForAge(rule.ageBands, age) : null;
    if (band) return band;
  }
  return null;
}

/** The published advice for an age in completed years, in the book's order; empty where it has none. */
export function adviceForAge(book: RuleBook, age: number): AdviceLine[] {
  return book.advice.filter((line) => line.ageMin <= age && age <= line.ageMax);
}
