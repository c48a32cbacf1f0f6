import { asc, eq, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { correction, correctionEvent } from "@/db/schema/corrections";
import { athlete } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import { site } from "@/db/schema/sites";
import { holdingTime } from "@/server/domain/mechanics/holding";
import type { LedgerCorrection } from "@/server/domain/mechanics/holding-ledger";
import {
  type CorrectionEvent,
  type CorrectionEventKind,
  standingOf,
} from "@/server/domain/reviews/correction-state";
import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { dayFinder } from "@/server/domain/time/day-finder";

/** Days by the clock of one zone. */
interface ZoneClock {
  today: CalendarDay;
  dayAt: (instantMs: number) => CalendarDay;
}

/**
 * Every correction the academy ever gave, with the coach whose review gave it, and how long it took to hold or is
 * watched, in days of its athlete's home site.
 */
export async function watchedCorrections(db: Db, nowMs: number): Promise<LedgerCorrection[]> {
  const rows = await db
    .select({
      checkpointId: correction.checkpointId,
      phase: correction.phase,
      drill: correction.drill,
      givenAtMs: correction.givenAtMs,
      coachId: review.coachPersonId,
      zone: site.zone,
      happened: happenings,
    })
    .from(correction)
    .innerJoin(review, eq(review.id, correction.reviewId))
    .innerJoin(athlete, eq(athlete.id, correction.athleteId))
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .orderBy(asc(correction.givenAtMs), asc(correction.position));
  const firstMs = rows[0]?.givenAtMs ?? nowMs;
  const clocks = new Map<string, ZoneClock>();
  const clockOf = (zone: string) => {
    const clock = clocks.get(zone) ?? zoneClock(zone, Math.min(firstMs, nowMs), nowMs);
    clocks.set(zone, clock);
    return clock;
  };
  return rows.map(({ zone, givenAtMs, happened, ...row }) => {
    const { today, dayAt } = clockOf(zone);
    return { ...row, ...holdingTime(standingOf(eventsOf(happened)).history, today, dayAt) };
  });
}

function zoneClock(zone: string, fromMs: number, nowMs: number): ZoneClock {
  const today = dayOf(nowMs, zone);
  return { today, dayAt: dayFinder(zone, dayOf(fromMs, zone), today) };
}

/**
 * What happened to a correction, oldest first, as a list of its own: beside 20,000 corrections a row for each event costs
 * three times as much.
 */
const happenings = sql<string>`(SELECT json_group_array(json_array(${correctionEvent.kind}, ${correctionEvent.atMs})
  ORDER BY ${correctionEvent.atMs}, "correction_event".rowid)
  FROM ${correctionEvent} WHERE ${correctionEvent.correctionId} = ${correction.id})`;

function eventsOf(happened: string): CorrectionEvent[] {
  const rows = JSON.parse(happened) as [CorrectionEventKind, number][];
  return rows.map(([kind, atMs]) => ({ kind, atMs, reason: REASON }));
}

/* A retirement was given with a reason; which one is nothing to the ledger, so that its words are not read. */
const REASON = "Given then.";
