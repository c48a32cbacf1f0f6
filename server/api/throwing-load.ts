import { z } from "zod";
import { sessionEfforts } from "@/server/data/session-efforts";
import { throwRecord } from "@/server/domain/throwing/load-by-day";
import { loadByWeek } from "@/server/domain/throwing/load-by-week";
import { effortByWeek } from "@/server/domain/throwing/load-effort";
import { loadInWords, monthsOffInWords, twelveMonthsInWords } from "@/server/domain/throwing/load-in-words";
import { monthsOff } from "@/server/domain/throwing/load-months-off";
import { twelveMonths } from "@/server/domain/throwing/load-year";
import type { ThrowEntry } from "@/server/domain/throwing/throw-entry";
import { mondayOf } from "@/server/domain/throwing/throws-by-week";
import { addDays, addMonths, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "./context";

const figure = z.number().min(0).nullable();

/** How an arm was loaded in these twelve months: figures and sentences, no verdict. Weeks are earliest first. */
export const throwingLoad = z.strictObject({
  /** How the last day stands; null for an empty log. */
  now: z.string().nullable(),
  /** The last 28 days as far as they are on record, latest first. */
  days: z.array(z.strictObject({ day: z.string(), throws: z.int() })),
  weeks: z.array(
    z.strictObject({
      weekOf: z.string(),
      asOf: z.string(),
      throws: z.int(),
      mean7: figure,
      mean28: figure,
      coupled: figure,
      uncoupled: figure,
      weighted: figure,
    }),
  ),
  /** Weeks that are over and hold a session whose effort was asked. */
  effort: z.array(
    z.strictObject({
      weekOf: z.string(),
      sessions: z.int(),
      withoutEffort: z.int(),
      load: figure,
      monotony: figure,
      strain: figure,
    }),
  ),
  year: z.array(z.string()),
  monthsOff: z.array(z.string()),
});

/** Describes the load of the athlete in hand. @param entries their whole log, so that the record begins where it does */
export async function loadFor(
  { db, athlete, today }: Scope,
  entries: readonly ThrowEntry[],
): Promise<z.output<typeof throwingLoad>> {
  const sinceDay = addMonths(today, -12);
  const record = throwRecord(entries, today);
  const weeks = record ? loadByWeek(record, sinceDay) : [];
  const last = weeks.at(-1);
  const efforts = await sessionEfforts(db, athlete.athleteId);
  const held = efforts.map(({ startsAtMs, ...each }) => ({
    ...each,
    heldOn: dayOf(startsAtMs, athlete.zone),
  }));
  return {
    now: last ? loadInWords(last, today) : null,
    days: (record?.throws ?? []).slice(-28).toReversed().map(dayBefore(today)),
    weeks,
    effort: effortByWeek(held, today).filter(({ weekOf }) => weekOf >= mondayOf(sinceDay)),
    year: twelveMonthsInWords(twelveMonths(entries, today), record?.firstDay ?? null),
    monthsOff: monthsOffInWords(monthsOff(entries, today)),
  };
}

const dayBefore = (today: CalendarDay) => (throws: number, days: number) => ({
  day: addDays(today, -days),
  throws,
});
