import { asc, count, eq, inArray, isNotNull, max, type SQL, sql } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { correction } from "@/db/schema/corrections";
import { athlete, person } from "@/db/schema/people";
import { site } from "@/db/schema/sites";
import { hasLeft } from "@/server/domain/people/leaving";
import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";

/** An athlete as the list of athletes shows them. */
export interface ListedAthlete {
  athleteId: string;
  givenName: string;
  familyName: string;
  bornOn: CalendarDay;
  throws: "right" | "left";
  zone: string;
  coachPersonId: string | null;
  coachGivenName: string | null;
  coachFamilyName: string | null;
  openCorrections: number;
  lastClipOn: CalendarDay | null;
}

const coachPerson = alias(person, "coach_person");

/** The athletes who have not left by now, each by the day at their home site, by family name. */
export async function listAthletes(db: Db, nowMs: number): Promise<ListedAthlete[]> {
  const rows = await athleteRows(db, nowMs, undefined);
  const open = await db
    .select({ athleteId: correction.athleteId, corrections: count() })
    .from(correction)
    .where(inArray(correction.state, ["given", "showing"]))
    .groupBy(correction.athleteId);
  const clips = await db
    .select({ athleteId: clip.athleteId, filmedOn: max(clip.filmedOn) })
    .from(clip)
    .where(isNotNull(clip.roundId))
    .groupBy(clip.athleteId);
  const openOf = new Map(open.map((row) => [row.athleteId, row.corrections]));
  const clipOf = new Map(clips.map((row) => [row.athleteId, row.filmedOn]));
  return rows.map((row) => ({
    ...row,
    openCorrections: openOf.get(row.athleteId) ?? 0,
    lastClipOn: clipOf.get(row.athleteId) ?? null,
  }));
}

/** At most `limit` athletes who have not left and whose name holds a text, by family name; none for a blank text. */
export async function athletesNamed(db: Db, text: string, options: { limit: number; nowMs: number }) {
  const words = text.trim().toLowerCase();
  if (words === "") return [];
  const name = sql`lower(${person.givenName} || ' ' || ${person.familyName})`;
  const rows = await athleteRows(db, options.nowMs, sql`instr(${name}, ${words}) > 0`);
  return rows.slice(0, options.limit);
}

async function athleteRows(db: Db, nowMs: number, condition: SQL | undefined) {
  const rows = await db
    .select({
      athleteId: athlete.id,
      givenName: person.givenName,
      familyName: person.familyName,
      bornOn: athlete.bornOn,
      throws: athlete.throws,
      zone: site.zone,
      leftOn: athlete.leftOn,
      coachPersonId: athlete.coachPersonId,
      coachGivenName: coachPerson.givenName,
      coachFamilyName: coachPerson.familyName,
    })
    .from(athlete)
    .innerJoin(person, eq(person.id, athlete.personId))
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .leftJoin(coachPerson, eq(coachPerson.id, athlete.coachPersonId))
    .where(condition)
    .orderBy(asc(person.familyName), asc(person.givenName), asc(athlete.id));
  return rows.filter((row) => !hasLeft(row.leftOn, dayOf(nowMs, row.zone)));
}
