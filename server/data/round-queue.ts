import { and, asc, desc, eq, inArray, isNull } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { clip } from "@/db/schema/clips";
import { correction } from "@/db/schema/corrections";
import { athlete, person, staffRole } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import { round } from "@/db/schema/rounds";
import { site } from "@/db/schema/sites";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { fullName } from "@/server/domain/people/person";
import type { DraftKind } from "@/server/domain/reviews/draft";
import type { RoundState } from "@/server/domain/reviews/round-state";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** A round as the queue lists it. Instants in epoch milliseconds, days at the athlete's home site. */
export interface QueuedRound {
  roundId: string;
  athleteId: string;
  athleteName: string;
  bornOn: CalendarDay;
  /** The coach who looks after the athlete. */
  ownCoachPersonId: string | null;
  state: RoundState;
  /** The coach who has the round. */
  coachPersonId: string | null;
  coachName: string | null;
  siteName: string;
  zone: string;
  receivedAtMs: number;
  dueAtMs: number | null;
  retakeFrom: RoundState | null;
  replyFrom: CalendarDay | null;
  lapsesOn: CalendarDay | null;
}

const coach = alias(person, "coach");

/** Every round in one of the states, the longest received first. */
export async function roundsIn(db: Db, states: readonly RoundState[]): Promise<QueuedRound[]> {
  const rows = await db
    .select({ round, athlete, athletePerson: person, coach, siteName: site.name, zone: site.zone })
    .from(round)
    .innerJoin(athlete, eq(athlete.id, round.athleteId))
    .innerJoin(person, eq(person.id, athlete.personId))
    .innerJoin(site, eq(site.id, round.siteId))
    .leftJoin(coach, eq(coach.id, round.coachPersonId))
    .where(inArray(round.state, [...states]))
    .orderBy(asc(round.receivedAtMs), asc(round.id));
  return rows.map((row) => ({
    roundId: row.round.id,
    athleteId: row.athlete.id,
    athleteName: fullName(row.athletePerson),
    bornOn: row.athlete.bornOn,
    ownCoachPersonId: row.athlete.coachPersonId,
    state: row.round.state,
    coachPersonId: row.round.coachPersonId,
    coachName: row.coach ? fullName(row.coach) : null,
    siteName: row.siteName,
    zone: row.zone,
    receivedAtMs: row.round.receivedAtMs,
    dueAtMs: row.round.dueAtMs,
    retakeFrom: row.round.retakeFrom,
    replyFrom: row.round.replyFrom,
    lapsesOn: row.round.lapsesOn,
  }));
}

/** The camera views of each round's live clips, first clips and reply apart, in the order they were sent. */
export async function viewsOf(
  db: Db,
  roundIds: readonly string[],
): Promise<Map<string, { first: CameraView[]; reply: CameraView[] }>> {
  const rows = await db
    .select({ roundId: clip.roundId, part: clip.part, view: clip.view })
    .from(clip)
    .where(and(inArray(clip.roundId, [...roundIds]), inArray(clip.state, ["ready", "drawing"])))
    .orderBy(asc(clip.position));
  const views = new Map<string, { first: CameraView[]; reply: CameraView[] }>();
  for (const { roundId, part, view } of rows) {
    if (!roundId || !part || !view) continue;
    const own = views.get(roundId) ?? { first: [], reply: [] };
    own[part].push(view);
    views.set(roundId, own);
  }
  return views;
}

/** What an athlete works on, by the checkpoint it is at. */
export interface OpenAt {
  correctionId: string;
  checkpointId: string;
  name: string;
}

/** The checkpoints of each athlete's open corrections, in the order they were given. */
export async function openCorrectionsAt(
  db: Db,
  athleteIds: readonly string[],
): Promise<Map<string, OpenAt[]>> {
  const rows = await db
    .select({
      athleteId: correction.athleteId,
      correctionId: correction.id,
      checkpointId: checkpoint.id,
      name: checkpoint.name,
    })
    .from(correction)
    .innerJoin(checkpoint, eq(checkpoint.id, correction.checkpointId))
    .where(
      and(inArray(correction.athleteId, [...athleteIds]), inArray(correction.state, ["given", "showing"])),
    )
    .orderBy(asc(correction.givenAtMs), asc(correction.position));
  const open = new Map<string, OpenAt[]>();
  for (const { athleteId, ...at } of rows) open.set(athleteId, [...(open.get(athleteId) ?? []), at]);
  return open;
}

/** Reviews looked back on for how long one takes: the academy's latest. Common practice, no source. */
const REVIEWS_LOOKED_AT = 600;

/** Minutes from opening to sending of each coach's latest reviews of one kind. */
export async function pastMinutes(db: Db, kind: DraftKind): Promise<Map<string, number[]>> {
  const rows = await db
    .select({ coachId: review.coachPersonId, openedAtMs: review.openedAtMs, sentAtMs: review.sentAtMs })
    .from(review)
    .where(eq(review.kind, kind))
    .orderBy(desc(review.sentAtMs))
    .limit(REVIEWS_LOOKED_AT);
  const minutes = new Map<string, number[]>();
  for (const { coachId, openedAtMs, sentAtMs } of rows) {
    minutes.set(coachId, [...(minutes.get(coachId) ?? []), (sentAtMs - openedAtMs) / 60_000]);
  }
  return minutes;
}

/** Everybody who coaches now, by name. */
export async function coachesNow(db: Db): Promise<{ personId: string; name: string }[]> {
  const rows = await db
    .select({ personId: person.id, givenName: person.givenName, familyName: person.familyName })
    .from(staffRole)
    .innerJoin(person, eq(person.id, staffRole.personId))
    .where(and(eq(staffRole.role, "coach"), isNull(staffRole.endedAtMs)))
    .orderBy(asc(person.givenName), asc(person.familyName));
  return rows.map(({ personId, ...name }) => ({ personId, name: fullName(name) }));
}
