import { and, asc, desc, eq, inArray, isNotNull, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { eventMark, measurement } from "@/db/schema/mechanics";
import { consent } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import type { SeenFrames } from "@/server/domain/mechanics/blind-pool";
import { grouped } from "@/server/domain/mechanics/grouped";
import { hasConsent } from "@/server/domain/people/consent";

/** Only what is still filmed, and of which somebody said from where, can be looked at again. */
const isThere = and(inArray(clip.state, ["ready", "drawing"]), isNotNull(clip.view));

/** Every frame of a film that is there, and whose athlete's consent is live, that a sent review marked or measured. */
export async function seenFrames(db: Db): Promise<SeenFrames> {
  const consenting = await consentingAthletes(db);
  const isAllowed = ({ athleteId }: { athleteId: string }) => consenting.has(athleteId);
  return {
    marked: (await markedFrames(db)).filter(isAllowed),
    measured: (await measuredFrames(db)).filter(isAllowed),
  };
}

async function consentingAthletes(db: Db): Promise<Set<string>> {
  const rows = await db.select().from(consent).where(eq(consent.purpose, "video"));
  return new Set(
    grouped(rows, ({ athleteId }) => athleteId).flatMap((group) =>
      hasConsent(group, "video") ? group.slice(0, 1).map(({ athleteId }) => athleteId) : [],
    ),
  );
}

/* A check may mark a moment anew: the latest mark counts. */
async function markedFrames(db: Db): Promise<SeenFrames["marked"]> {
  const turn = sql<number>`row_number() OVER (PARTITION BY ${eventMark.clipId}, ${eventMark.event}
    ORDER BY ${review.sentAtMs} DESC, "event_mark".rowid DESC)`;
  const rows = await db
    .select({
      athleteId: clip.athleteId,
      coachId: review.coachPersonId,
      clipId: eventMark.clipId,
      frame: eventMark.frame,
      view: clip.view,
      event: eventMark.event,
      turn,
    })
    .from(eventMark)
    .innerJoin(review, eq(review.id, eventMark.reviewId))
    .innerJoin(clip, eq(clip.id, eventMark.clipId))
    .where(isThere)
    .orderBy(desc(review.sentAtMs), asc(eventMark.id));
  return rows.flatMap(({ turn: at, view, ...row }) => (at === 1 && view !== null ? [{ ...row, view }] : []));
}

async function measuredFrames(db: Db): Promise<SeenFrames["measured"]> {
  const turn = sql<number>`row_number() OVER (PARTITION BY ${measurement.clipId}, ${measurement.checkpointId},
    ${measurement.kind} ORDER BY ${measurement.atMs}, "measurement".rowid)`;
  const rows = await db
    .select({
      athleteId: measurement.athleteId,
      coachId: measurement.coachPersonId,
      clipId: measurement.clipId,
      frame: measurement.frame,
      view: measurement.view,
      kind: measurement.kind,
      checkpointId: measurement.checkpointId,
      turn,
    })
    .from(measurement)
    .innerJoin(clip, eq(clip.id, measurement.clipId))
    .where(and(isThere, isNotNull(measurement.reviewId), isNotNull(measurement.checkpointId)))
    .orderBy(desc(measurement.atMs), asc(measurement.id));
  return rows.flatMap(({ turn: at, checkpointId, ...row }) =>
    at === 1 && checkpointId !== null ? [{ ...row, checkpointId }] : [],
  );
}

/**
 * The measure of a frame that was sent first, whose frames its points lie on; null when there is none. It is what a
 * blind item of a measure was drawn from.
 */
export async function firstMeasureOn(
  db: Db,
  at: { clipId: string; frame: number; kind: (typeof measurement.$inferSelect)["kind"] },
): Promise<string | null> {
  const [row] = await db
    .select({ id: measurement.id })
    .from(measurement)
    .where(
      and(
        ...[eq(measurement.clipId, at.clipId), eq(measurement.frame, at.frame)],
        ...[eq(measurement.kind, at.kind), isNotNull(measurement.reviewId)],
      ),
    )
    .orderBy(asc(measurement.atMs), sql`"measurement".rowid`)
    .limit(1);
  return row?.id ?? null;
}
