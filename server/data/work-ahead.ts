import { and, count, eq, gt, inArray, lt, type SQL } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete } from "@/db/schema/people";
import { round } from "@/db/schema/rounds";
import { session } from "@/db/schema/sessions";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { isStillThere } from "./leaving";

async function bookedSessions(db: Db, condition: SQL | undefined): Promise<number> {
  const [row] = await db
    .select({ sessions: count() })
    .from(session)
    .where(and(inArray(session.state, ["booked", "checked_in"]), condition));
  return row?.sessions ?? 0;
}

/** How many booked sessions a coach has that end after an instant. */
export async function sessionsAheadOfCoach(db: Db, coachPersonId: string, nowMs: number): Promise<number> {
  return bookedSessions(db, and(eq(session.coachPersonId, coachPersonId), gt(session.endsAtMs, nowMs)));
}

/** How many booked sessions a lane has that end after an instant. */
export async function sessionsAheadOnLane(db: Db, laneId: string, nowMs: number): Promise<number> {
  return bookedSessions(db, and(eq(session.laneId, laneId), gt(session.endsAtMs, nowMs)));
}

/** How many booked sessions a site has within `[startMs, endMs)`; a session that only touches does not count. */
export async function sessionsAtSite(
  db: Db,
  siteId: string,
  span: { startMs: number; endMs: number },
): Promise<number> {
  const { startMs, endMs } = span;
  return bookedSessions(
    db,
    and(eq(session.siteId, siteId), lt(session.startsAtMs, endMs), gt(session.endsAtMs, startMs)),
  );
}

/** How many booked sessions a coach has within `[startMs, endMs)`; a session that only touches does not count. */
export async function sessionsOfCoach(
  db: Db,
  coachPersonId: string,
  span: { startMs: number; endMs: number },
): Promise<number> {
  const { startMs, endMs } = span;
  return bookedSessions(
    db,
    and(
      eq(session.coachPersonId, coachPersonId),
      lt(session.startsAtMs, endMs),
      gt(session.endsAtMs, startMs),
    ),
  );
}

/** How many rounds a coach has in hand: taken or waiting for a family, not yet settled, lapsed or withdrawn. */
export async function roundsInHand(db: Db, coachPersonId: string): Promise<number> {
  const [row] = await db
    .select({ rounds: count() })
    .from(round)
    .where(
      and(
        eq(round.coachPersonId, coachPersonId),
        inArray(round.state, ["taken", "sent", "answered", "retake"]),
      ),
    );
  return row?.rounds ?? 0;
}

/** How many athletes who have not left by a day have a site as their home. */
export async function athletesAtHome(db: Db, siteId: string, today: CalendarDay): Promise<number> {
  const [row] = await db
    .select({ athletes: count() })
    .from(athlete)
    .where(and(eq(athlete.homeSiteId, siteId), isStillThere(today)));
  return row?.athletes ?? 0;
}
