import { and, asc, count, eq, gt, gte, inArray, isNull, or, type SQL } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete } from "@/db/schema/people";
import { round } from "@/db/schema/rounds";
import { session, sessionAthlete } from "@/db/schema/sessions";
import { OWED_STATES } from "@/server/domain/reviews/round-state";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** The condition that an athlete has not left by a day. */
export function isStillThere(day: CalendarDay): SQL | undefined {
  return or(isNull(athlete.leftOn), gt(athlete.leftOn, day));
}

/** When an athlete joined, and from which day on they are gone; null when there is no such athlete. */
export async function stayOf(
  db: Db,
  athleteId: string,
): Promise<{ joinedOn: CalendarDay; leftOn: CalendarDay | null } | null> {
  const [row] = await db
    .select({ joinedOn: athlete.joinedOn, leftOn: athlete.leftOn })
    .from(athlete)
    .where(eq(athlete.id, athleteId));
  return row ?? null;
}

/**
 * Says from which day on an athlete is gone, or with null that they are back, over the version that was read.
 * @returns false when somebody saved in between; nothing is written then
 */
export async function saveLeaving(
  tx: Db,
  at: { athleteId: string; version: number },
  leftOn: CalendarDay | null,
): Promise<boolean> {
  const saved = await tx
    .update(athlete)
    .set({ leftOn, version: at.version + 1 })
    .where(and(eq(athlete.id, at.athleteId), eq(athlete.version, at.version)))
    .returning({ id: athlete.id });
  return saved.length === 1;
}

/** The booked sessions of an athlete that start at `fromMs` or later and have not ended at `nowMs`, earliest first. */
export async function bookedFrom(db: Db, athleteId: string, fromMs: number, nowMs: number) {
  return db
    .select({ startsAtMs: session.startsAtMs })
    .from(session)
    .innerJoin(sessionAthlete, eq(sessionAthlete.sessionId, session.id))
    .where(
      and(
        eq(sessionAthlete.athleteId, athleteId),
        inArray(session.state, ["booked", "checked_in"]),
        gte(session.startsAtMs, fromMs),
        gt(session.endsAtMs, nowMs),
      ),
    )
    .orderBy(asc(session.startsAtMs));
}

/** How many rounds of an athlete the academy owes the next step of. */
export async function roundsOwedTo(db: Db, athleteId: string): Promise<number> {
  const [row] = await db
    .select({ rounds: count() })
    .from(round)
    .where(and(eq(round.athleteId, athleteId), inArray(round.state, [...OWED_STATES])));
  return row?.rounds ?? 0;
}
