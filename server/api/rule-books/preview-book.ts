import { setImmediate } from "node:timers/promises";
import { z } from "zod";
import { armsOf } from "@/server/data/arms";
import { listAthletes } from "@/server/data/athletes";
import { fullName } from "@/server/domain/people/person";
import { daysThatDiffer } from "@/server/domain/rule-books/compare-books";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { addDays, dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";

/** Days looked back on, up to yesterday. */
const DAYS_BACK = 30;

/** The most lines of a preview that are listed; the counts are of all. */
const MOST_LISTED = 300;

/** What a book would have said of the last thirty days, where that differs from what the books in force said. */
export const previewAnswer = z.strictObject({
  fromDay: z.string(),
  toDay: z.string(),
  athletes: z.number(),
  athletesThatDiffer: z.number(),
  daysThatDiffer: z.number(),
  stricter: z.number(),
  looser: z.number(),
  listed: z.array(
    z.strictObject({
      athleteId: z.string(),
      name: z.string(),
      day: z.string(),
      before: z.string(),
      after: z.string(),
      change: z.enum(["stricter", "looser"]),
    }),
  ),
});

/** Compares a book with the one each athlete goes by, for every athlete, and lets others be served in between. */
export async function previewOf(
  { db, nowMs }: Scope,
  book: RuleBook,
): Promise<z.output<typeof previewAnswer>> {
  const athletes = await listAthletes(db, nowMs);
  const ids = athletes.map(({ athleteId }) => athleteId);
  const arms = await armsOf(db, ids, nowMs);
  const names = new Map(athletes.map((each) => [each.athleteId, fullName(each)]));
  const today = dayOf(nowMs, athletes[0]?.zone ?? "UTC");
  const days = Array.from({ length: DAYS_BACK }, (_, index) => addDays(today, index - DAYS_BACK));
  const found = [];
  for (const arm of arms.values()) {
    const { athleteId } = arm;
    const name = names.get(athleteId) ?? "";
    found.push(...daysThatDiffer(arm, book, days).map((difference) => ({ athleteId, name, ...difference })));
    await setImmediate();
  }
  const stricter = found.filter(({ change }) => change === "stricter").length;
  return {
    fromDay: addDays(today, -DAYS_BACK),
    toDay: addDays(today, -1),
    athletes: ids.length,
    athletesThatDiffer: new Set(found.map(({ athleteId }) => athleteId)).size,
    daysThatDiffer: found.length,
    stricter,
    looser: found.length - stricter,
    listed: found.slice(0, MOST_LISTED),
  };
}
