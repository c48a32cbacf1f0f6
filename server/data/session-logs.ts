import { asc, eq, inArray, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { correction } from "@/db/schema/corrections";
import { person, remark } from "@/db/schema/people";
import { sessionLog, sessionPlan, sessionWork } from "@/db/schema/sessions";
import { checkIn } from "@/db/schema/throwing";
import type { CountedPitches } from "@/server/domain/calendar/counted-pitches";
import type { LogLine } from "@/server/domain/calendar/session-log-problem";
import type { Attendance, WorkOutcome } from "@/server/domain/calendar/session-state";
import { fullName } from "@/server/domain/people/person";
import { newId } from "./new-id";
import { keepRemark } from "./remarks";

/** What was asked before mound work, and the answer. */
export interface KeptCheckIn {
  athleteId: string;
  thrownSince: boolean;
  pain: boolean;
  atMs: number;
  askedByName: string;
}

/** Notes what a coach asked of an athlete before mound work, and the answer. */
export async function insertCheckIn(tx: Db, asked: Omit<typeof checkIn.$inferInsert, "id">): Promise<void> {
  await tx.insert(checkIn).values({ id: newId("chk"), ...asked });
}

/** The check-ins of a session, oldest first. */
export async function checkInsOf(db: Db, sessionId: string): Promise<KeptCheckIn[]> {
  const rows = await db
    .select({ row: checkIn, givenName: person.givenName, familyName: person.familyName })
    .from(checkIn)
    .leftJoin(person, eq(person.id, checkIn.askedByPersonId))
    .where(eq(checkIn.sessionId, sessionId))
    .orderBy(asc(checkIn.atMs), sql`"check_in".rowid`);
  return rows.map(({ row, givenName, familyName }) => ({
    athleteId: row.athleteId,
    thrownSince: row.thrownSince,
    pain: row.pain,
    atMs: row.atMs,
    askedByName: fullName({ givenName: givenName ?? "", familyName: familyName ?? "" }),
  }));
}

/** Writes what was done with one athlete, its note apart from it. */
export async function insertSessionLog(
  tx: Db,
  line: LogLine & { sessionId: string; note: string; loggedByPersonId: string; loggedAtMs: number },
): Promise<void> {
  const { note, work, ...row } = line;
  const id = newId("slg");
  await tx.insert(sessionLog).values({ id, ...row, remarkId: await keepRemark(tx, note) });
  for (const each of work) await tx.insert(sessionWork).values({ sessionLogId: id, ...each });
}

/** One athlete's line on the log of a session. */
export interface KeptLogLine extends CountedPitches {
  athleteId: string;
  attendance: Attendance;
  minutes: number;
  pitches: number;
  effort: number | null;
  note: string;
  loggedAtMs: number;
  work: { correctionId: string; checkpointName: string; outcome: WorkOutcome }[];
}

/** The log of a session, a line for each athlete; empty until it is logged. Erased notes are empty. */
export async function logLinesOf(db: Db, sessionId: string): Promise<KeptLogLine[]> {
  const rows = await db
    .select({ log: sessionLog, note: remark.text })
    .from(sessionLog)
    .leftJoin(remark, eq(remark.id, sessionLog.remarkId))
    .where(eq(sessionLog.sessionId, sessionId));
  const work = await db
    .select({
      logId: sessionWork.sessionLogId,
      correctionId: sessionWork.correctionId,
      outcome: sessionWork.outcome,
      checkpointName: checkpoint.name,
    })
    .from(sessionWork)
    .innerJoin(correction, eq(correction.id, sessionWork.correctionId))
    .innerJoin(checkpoint, eq(checkpoint.id, correction.checkpointId))
    .where(
      inArray(
        sessionWork.sessionLogId,
        rows.map((row) => row.log.id),
      ),
    );
  return rows.map(({ log, note }) => ({
    athleteId: log.athleteId,
    attendance: log.attendance,
    minutes: log.minutes,
    pitches: log.pitches,
    effort: log.effort,
    ...{ strikes: log.strikes, topSpeed: log.topSpeed, speedUnit: log.speedUnit },
    note: note ?? "",
    loggedAtMs: log.loggedAtMs,
    work: work.filter((each) => each.logId === log.id).map(({ logId: _, ...each }) => each),
  }));
}

/** The corrections a session is to confirm, by id. */
export async function plannedCorrectionIds(db: Db, sessionId: string): Promise<Set<string>> {
  const rows = await db
    .select({ correctionId: sessionPlan.correctionId })
    .from(sessionPlan)
    .where(eq(sessionPlan.sessionId, sessionId));
  return new Set(rows.map((row) => row.correctionId));
}
