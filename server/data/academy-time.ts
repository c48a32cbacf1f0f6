import { and, eq, gt, inArray, isNull, lt, ne } from "drizzle-orm";
import type { Db } from "@/db/client";
import { coachAbsence, coachHours } from "@/db/schema/coaches";
import { person, staffRole } from "@/db/schema/people";
import { claim } from "@/db/schema/sessions";
import { lane, site, siteClosure, siteHours } from "@/db/schema/sites";
import type { AcademyTime, CoachHours, Lane, SiteHours } from "@/server/domain/calendar/academy-time";
import type { Claim, ClaimResource } from "@/server/domain/calendar/claims";
import { fullName } from "@/server/domain/people/person";

/** The names that go with the ids of an academy's time. */
export interface PlaceNames {
  sites: { id: string; name: string; zone: string }[];
  lanes: (Lane & { name: string })[];
  coaches: { id: string; name: string }[];
}

/**
 * The academy as finding and checking a time needs it: live sites, lanes and coaches with their hours, and every claim
 * that overlaps `[fromMs, toMs)`, but for those of a session that is being moved.
 */
export async function loadAcademyTime(
  db: Db,
  span: { fromMs: number; toMs: number; exceptSessionId?: string | null },
): Promise<AcademyTime & { names: PlaceNames }> {
  const names = await placeNames(db);
  return {
    names,
    sites: await siteHoursOf(db, names.sites),
    lanes: names.lanes.map(({ id, siteId, kind }) => ({ id, siteId, kind })),
    coaches: await coachHoursOf(db, names, span),
    busy: await claimsWithin(db, span),
  };
}

/** Live sites by name, their lanes by name, and the people who coach, by name. */
export async function placeNames(db: Db): Promise<PlaceNames> {
  const sites = await db
    .select({ id: site.id, name: site.name, zone: site.zone })
    .from(site)
    .where(isNull(site.retiredAtMs))
    .orderBy(site.name, site.id);
  const lanes = await db
    .select({ id: lane.id, siteId: lane.siteId, name: lane.name, kind: lane.kind })
    .from(lane)
    .innerJoin(site, eq(site.id, lane.siteId))
    .where(and(isNull(lane.retiredAtMs), isNull(site.retiredAtMs)))
    .orderBy(site.name, lane.name, lane.id);
  return { sites, lanes, coaches: await coachNames(db) };
}

async function coachNames(db: Db) {
  const rows = await db
    .select({ id: person.id, givenName: person.givenName, familyName: person.familyName })
    .from(staffRole)
    .innerJoin(person, eq(person.id, staffRole.personId))
    .where(and(eq(staffRole.role, "coach"), isNull(staffRole.endedAtMs)))
    .orderBy(person.givenName, person.familyName, person.id);
  return rows.map((row) => ({ id: row.id, name: fullName(row) }));
}

async function siteHoursOf(db: Db, sites: PlaceNames["sites"]): Promise<SiteHours[]> {
  const week = await db.select().from(siteHours);
  const closures = await db.select().from(siteClosure);
  return sites.map(({ id, zone }) => ({
    id,
    hours: {
      zone,
      week: week.filter((row) => row.siteId === id),
      closedOn: new Set(closures.filter((row) => row.siteId === id).map((row) => row.closedOn)),
    },
  }));
}

async function coachHoursOf(
  db: Db,
  names: PlaceNames,
  span: { fromMs: number; toMs: number },
): Promise<CoachHours[]> {
  const ids = names.coaches.map((coach) => coach.id);
  const spans = await db.select().from(coachHours).where(inArray(coachHours.coachPersonId, ids));
  const absences = await db
    .select()
    .from(coachAbsence)
    .where(
      and(
        inArray(coachAbsence.coachPersonId, ids),
        lt(coachAbsence.startsAtMs, span.toMs),
        gt(coachAbsence.endsAtMs, span.fromMs),
      ),
    );
  return ids.map((id) => ({
    id,
    hours: names.sites.map((place) => ({
      siteId: place.id,
      week: spans
        .filter((row) => row.coachPersonId === id && row.siteId === place.id)
        .map((row) => ({ weekday: row.weekday, opensMin: row.startsMin, closesMin: row.endsMin })),
    })),
    absences: absences
      .filter((row) => row.coachPersonId === id)
      .map((row) => ({ startMs: row.startsAtMs, endMs: row.endsAtMs })),
  }));
}

async function claimsWithin(
  db: Db,
  span: { fromMs: number; toMs: number; exceptSessionId?: string | null },
): Promise<Claim[]> {
  const rows = await db
    .select({ resource: claim.resource, startsAtMs: claim.startsAtMs, endsAtMs: claim.endsAtMs })
    .from(claim)
    .where(
      and(
        lt(claim.startsAtMs, span.toMs),
        gt(claim.endsAtMs, span.fromMs),
        ne(claim.sessionId, span.exceptSessionId ?? ""),
      ),
    );
  return rows.map((row) => ({ ...row, resource: row.resource as ClaimResource }));
}
