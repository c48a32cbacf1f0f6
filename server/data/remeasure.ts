import { and, asc, desc, eq, inArray, isNotNull, isNull, or, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { measurement, remeasureRequest } from "@/db/schema/mechanics";
import { athlete, person } from "@/db/schema/people";
import type { Actor, AthleteScope } from "@/server/domain/access/relation";
import { mayWithdraw } from "@/server/domain/mechanics/measure-again";
import { fullName } from "@/server/domain/people/person";
import { athleteScope } from "./access";
import { findMeasurement } from "./measurements";
import { NAMELESS, namesOf } from "./names";
import { newId } from "./new-id";

/** A frame that is to be measured a second time, as it is kept. */
export type RemeasureRequest = typeof remeasureRequest.$inferSelect;

/** What a second measure is asked for; by whom, and of whom (null: whoever comes first). */
export type Asking = Pick<
  RemeasureRequest,
  "measurementId" | "athleteId" | "askedByPersonId" | "forPersonId" | "askedAtMs"
>;

/** A request, or null when there is none by that id. */
export async function findRemeasure(db: Db, requestId: string): Promise<RemeasureRequest | null> {
  const [row] = await db.select().from(remeasureRequest).where(eq(remeasureRequest.id, requestId));
  return row ?? null;
}

/** What access needs of the athlete a request is about, or null when there is no such request. */
export async function remeasureScope(db: Db, requestId: string): Promise<AthleteScope | null> {
  const row = await findRemeasure(db, requestId);
  return row ? athleteScope(db, row.athleteId) : null;
}

/** What access needs of the athlete who was measured, or null when there is no such measurement. */
export async function measurementScope(db: Db, measurementId: string): Promise<AthleteScope | null> {
  const row = await findMeasurement(db, measurementId);
  return row ? athleteScope(db, row.athleteId) : null;
}

/** Asks for a second measure. Asked again of the same coach while the first asking is open, it stays one. */
export async function askRemeasure(tx: Db, asking: Asking): Promise<void> {
  const { measurementId, forPersonId } = asking;
  const ofSame =
    forPersonId === null
      ? isNull(remeasureRequest.forPersonId)
      : eq(remeasureRequest.forPersonId, forPersonId);
  const open = await tx
    .select({ id: remeasureRequest.id })
    .from(remeasureRequest)
    .where(and(eq(remeasureRequest.measurementId, measurementId), ofSame, isNull(remeasureRequest.doneAtMs)));
  if (open.length > 0) return;
  await tx.insert(remeasureRequest).values({ ...asking, id: newId("rmr") });
}

/** Notes that a request was answered, or without a measurement that it was withdrawn. @returns false when it was over */
export async function finishRemeasure(
  tx: Db,
  requestId: string,
  done: { doneAtMs: number; doneMeasurementId: string | null },
): Promise<boolean> {
  const rows = await tx
    .update(remeasureRequest)
    .set(done)
    .where(and(eq(remeasureRequest.id, requestId), isNull(remeasureRequest.doneAtMs)))
    .returning({ id: remeasureRequest.id });
  return rows.length === 1;
}

/** As many as wait on one list, and as many of the latest measures as one is chosen from. Common practice, no source. */
const MAX_WAITING = 60;
const MAX_LATEST = 30;

/** Only what is still filmed can be measured again. */
const isFilmed = inArray(clip.state, ["ready", "drawing"]);

/**
 * The open requests that a person may answer or withdraw, the oldest first: those asked of them, those for whoever comes
 * first, those they asked for; an admin's are all.
 */
export async function waitingRemeasures(db: Db, actor: Pick<Actor, "personId" | "roles">) {
  const { personId, roles } = actor;
  const theirs = or(
    isNull(remeasureRequest.forPersonId),
    eq(remeasureRequest.forPersonId, personId),
    eq(remeasureRequest.askedByPersonId, personId),
  );
  const rows = await db
    .select({
      requestId: remeasureRequest.id,
      kind: measurement.kind,
      view: measurement.view,
      frame: measurement.frame,
      forPersonId: remeasureRequest.forPersonId,
      askedByPersonId: remeasureRequest.askedByPersonId,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(remeasureRequest)
    .innerJoin(measurement, eq(measurement.id, remeasureRequest.measurementId))
    .innerJoin(clip, eq(clip.id, measurement.clipId))
    .innerJoin(athlete, eq(athlete.id, remeasureRequest.athleteId))
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(and(isNull(remeasureRequest.doneAtMs), isFilmed, roles.includes("admin") ? undefined : theirs))
    .orderBy(asc(remeasureRequest.askedAtMs), asc(remeasureRequest.id))
    .limit(MAX_WAITING);
  const asked = await namesOf(
    db,
    rows.flatMap(({ forPersonId }) => (forPersonId === null ? [] : [forPersonId])),
  );
  return rows.map(({ forPersonId, askedByPersonId, givenName, familyName, ...row }) => ({
    ...row,
    athleteName: fullName({ givenName, familyName }),
    isForMe: forPersonId === personId,
    askedOf: forPersonId === null ? null : fullName(asked.get(forPersonId) ?? NAMELESS),
    mayWithdraw: mayWithdraw({ askedByPersonId }, actor),
  }));
}

/** The latest measures that were sent and whose film is there, the latest first, without what they are worth. */
export async function latestMeasurements(db: Db) {
  const rows = await db
    .select({
      id: measurement.id,
      kind: measurement.kind,
      view: measurement.view,
      frame: measurement.frame,
      measuredOn: measurement.measuredOn,
      coachPersonId: measurement.coachPersonId,
      times: sql<number>`(SELECT count(*) FROM measurement again WHERE again.repeat_of_id = ${measurement.id})`,
      asked: sql<number>`(SELECT count(*) FROM remeasure_request open
        WHERE open.measurement_id = ${measurement.id} AND open.done_at_ms IS NULL)`,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(measurement)
    .innerJoin(clip, eq(clip.id, measurement.clipId))
    .innerJoin(athlete, eq(athlete.id, measurement.athleteId))
    .innerJoin(person, eq(person.id, athlete.personId))
    .where(and(isNotNull(measurement.reviewId), isFilmed))
    .orderBy(desc(measurement.atMs), sql`"measurement".rowid DESC`)
    .limit(MAX_LATEST);
  const coaches = await namesOf(
    db,
    rows.map((row) => row.coachPersonId),
  );
  return rows.map(({ givenName, familyName, times, asked, coachPersonId, ...row }) => ({
    ...row,
    coachName: fullName(coaches.get(coachPersonId) ?? NAMELESS),
    athleteName: fullName({ givenName, familyName }),
    timesAgain: times,
    isAsked: asked > 0,
  }));
}
