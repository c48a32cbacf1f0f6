import { setImmediate } from "node:timers/promises";
import { z } from "zod";
import { armsOfThePast } from "@/server/data/arms";
import { listAthletes } from "@/server/data/athletes";
import { fullName } from "@/server/domain/people/person";
import { BOOK_CHANGES, daysThatDiffer, differingSpans } from "@/server/domain/rule-books/compare-books";
import { reachDays } from "@/server/domain/throwing/dated-book";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { addDays, dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";

/** Days looked back on, up to yesterday. */
const DAYS_BACK = 30;

/** The most lines of a preview that are listed; the counts are of all. */
const MOST_LISTED = 200;

/** What a book would have said of the last thirty days, where that differs from what the books in force said. */
export const previewAnswer = z.strictObject({
  fromDay: z.string(),
  toDay: z.string(),
  athletes: z.number(),
  athletesThatDiffer: z.number(),
  daysThatDiffer: z.number(),
  stricter: z.number(),
  looser: z.number(),
  /** Lines there are, listed or not. */
  lines: z.number(),
  listed: z.array(
    z.strictObject({
      athleteId: z.string(),
      name: z.string(),
      fromDay: z.string(),
      toDay: z.string(),
      days: z.number(),
      before: z.string(),
      after: z.string(),
      change: z.enum(BOOK_CHANGES),
    }),
  ),
});

/** How many days the limits of a book look back. */
function furthestLook(book: RuleBook): number {
  return Math.max(0, ...book.rules.filter(({ level }) => level === "limit").map(reachDays));
}

/** Compares a book with the one each athlete goes by, for every athlete, and lets others be served in between. */
export async function previewOf(
  { db, nowMs }: Scope,
  book: RuleBook,
): Promise<z.output<typeof previewAnswer>> {
  const athletes = await listAthletes(db, nowMs);
  const ids = athletes.map(({ athleteId }) => athleteId);
  const arms = await armsOfThePast(db, ids, nowMs, DAYS_BACK + furthestLook(book));
  const names = new Map(athletes.map((each) => [each.athleteId, fullName(each)]));
  const today = dayOf(nowMs, athletes[0]?.zone ?? "UTC");
  const days = Array.from({ length: DAYS_BACK }, (_, index) => addDays(today, index - DAYS_BACK));
  const counts = { athletesThatDiffer: 0, daysThatDiffer: 0, stricter: 0, looser: 0 };
  const lines: z.output<typeof previewAnswer>["listed"] = [];
  for (const arm of arms.values()) {
    const differences = daysThatDiffer(arm, book, days);
    counts.athletesThatDiffer += differences.length > 0 ? 1 : 0;
    counts.daysThatDiffer += differences.length;
    counts.stricter += differences.filter(({ change }) => change === "stricter").length;
    counts.looser += differences.filter(({ change }) => change === "looser").length;
    const who = { athleteId: arm.athleteId, name: names.get(arm.athleteId) ?? "" };
    lines.push(...differingSpans(differences).map((span) => ({ ...who, ...span })));
    await setImmediate();
  }
  return {
    fromDay: addDays(today, -DAYS_BACK),
    toDay: addDays(today, -1),
    athletes: ids.length,
    ...counts,
    lines: lines.length,
    listed: lines.slice(0, MOST_LISTED),
  };
}
