import { and, asc, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { session, sessionLog } from "@/db/schema/sessions";

/** A logged session that an athlete came to: when, how long, how hard. */
export interface LoggedEffort {
  startsAtMs: number;
  minutes: number;
  /** 0 to 10; null when it was not asked. */
  effort: number | null;
}

/** All sessions an athlete came to, as logged, earliest first. Dry work is among them. */
export async function sessionEfforts(db: Db, athleteId: string): Promise<LoggedEffort[]> {
  return db
    .select({ startsAtMs: session.startsAtMs, minutes: sessionLog.minutes, effort: sessionLog.effort })
    .from(sessionLog)
    .innerJoin(session, eq(session.id, sessionLog.sessionId))
    .where(and(eq(sessionLog.athleteId, athleteId), eq(sessionLog.attendance, "came")))
    .orderBy(asc(session.startsAtMs), asc(session.id));
}
