import { and, asc, eq, isNull, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { lane, site, siteClosure, siteHours } from "@/db/schema/sites";
import type { LaneKind } from "@/server/domain/calendar/session-kind";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { WeeklyHours } from "@/server/domain/time/open-hours";
import { newId } from "./new-id";

/** A site with its week, its closed days from a day on, and its lanes, retired ones last. */
export interface SiteCard {
  siteId: string;
  name: string;
  zone: string;
  address: string;
  isRetired: boolean;
  week: WeeklyHours[];
  closures: { closureId: string; closedOn: CalendarDay; reason: string }[];
  lanes: { laneId: string; name: string; kind: LaneKind; isRetired: boolean }[];
}

/** Name, zone and address of a site. */
export interface SiteDetails {
  name: string;
  zone: string;
  address: string;
}

/** Every site by name, live ones first; each with the closures of `closuresFrom` and later. */
export async function listSites(db: Db, closuresFrom: CalendarDay): Promise<SiteCard[]> {
  const sites = await db
    .select()
    .from(site)
    .orderBy(sql`${site.retiredAtMs} IS NOT NULL`, asc(site.name), site.id);
  const cards: SiteCard[] = [];
  for (const { id: siteId, retiredAtMs, ...details } of sites) {
    cards.push({
      siteId,
      ...details,
      isRetired: retiredAtMs !== null,
      week: await weekOf(db, siteId),
      closures: await closuresOf(db, siteId, closuresFrom),
      lanes: await lanesOf(db, siteId),
    });
  }
  return cards;
}

/** Name, zone and address of a live site, or null. */
export async function findSite(db: Db, siteId: string): Promise<SiteDetails | null> {
  const [row] = await db
    .select({ name: site.name, zone: site.zone, address: site.address })
    .from(site)
    .where(and(eq(site.id, siteId), isNull(site.retiredAtMs)));
  return row ?? null;
}

function weekOf(db: Db, siteId: string) {
  return db
    .select({ weekday: siteHours.weekday, opensMin: siteHours.opensMin, closesMin: siteHours.closesMin })
    .from(siteHours)
    .where(eq(siteHours.siteId, siteId))
    .orderBy(siteHours.weekday, siteHours.opensMin);
}

function closuresOf(db: Db, siteId: string, from: CalendarDay) {
  return db
    .select({ closureId: siteClosure.id, closedOn: siteClosure.closedOn, reason: siteClosure.reason })
    .from(siteClosure)
    .where(and(eq(siteClosure.siteId, siteId), sql`${siteClosure.closedOn} >= ${from}`))
    .orderBy(siteClosure.closedOn);
}

async function lanesOf(db: Db, siteId: string) {
  const rows = await db
    .select({ laneId: lane.id, name: lane.name, kind: lane.kind, retiredAtMs: lane.retiredAtMs })
    .from(lane)
    .where(eq(lane.siteId, siteId))
    .orderBy(sql`${lane.retiredAtMs} IS NOT NULL`, lane.name, lane.id);
  return rows.map(({ retiredAtMs, ...row }) => ({ ...row, isRetired: retiredAtMs !== null }));
}

/** Adds a site and gives its id. */
export async function insertSite(tx: Db, details: SiteDetails): Promise<string> {
  const id = newId("sit");
  await tx.insert(site).values({ id, ...details });
  return id;
}

/** Changes a site's name, zone and address. */
export async function saveSite(tx: Db, siteId: string, details: SiteDetails): Promise<void> {
  await tx.update(site).set(details).where(eq(site.id, siteId));
}

/** Retires a site: what took place there stays. */
export async function retireSite(tx: Db, siteId: string, nowMs: number): Promise<void> {
  await tx.update(site).set({ retiredAtMs: nowMs }).where(eq(site.id, siteId));
}

/** Replaces the weekly hours of a site. */
export async function saveWeek(tx: Db, siteId: string, week: readonly WeeklyHours[]): Promise<void> {
  await tx.delete(siteHours).where(eq(siteHours.siteId, siteId));
  for (const { weekday, opensMin, closesMin } of week) {
    await tx.insert(siteHours).values({ id: newId("shr"), siteId, weekday, opensMin, closesMin });
  }
}

/** Closes a site for a day; a day closed already keeps its first reason. */
export async function insertClosure(
  tx: Db,
  siteId: string,
  closure: { closedOn: CalendarDay; reason: string },
): Promise<void> {
  await tx
    .insert(siteClosure)
    .values({ id: newId("cls"), siteId, ...closure })
    .onConflictDoNothing();
}

/** Opens a closed day again. @returns false when there is no such closure */
export async function deleteClosure(tx: Db, closureId: string): Promise<boolean> {
  const gone = await tx
    .delete(siteClosure)
    .where(eq(siteClosure.id, closureId))
    .returning({ id: siteClosure.id });
  return gone.length === 1;
}

/** Adds a lane to a site and gives its id. */
export async function insertLane(
  tx: Db,
  siteId: string,
  details: { name: string; kind: LaneKind },
): Promise<string> {
  const id = newId("lan");
  await tx.insert(lane).values({ id, siteId, ...details });
  return id;
}

/** The site and name of a live lane, or null. */
export async function findLane(db: Db, laneId: string) {
  const [row] = await db
    .select({ siteId: lane.siteId, name: lane.name })
    .from(lane)
    .where(and(eq(lane.id, laneId), isNull(lane.retiredAtMs)));
  return row ?? null;
}

/** Retires a lane: no session can be booked on it any more, what took place there stays. */
export async function retireLane(tx: Db, laneId: string, nowMs: number): Promise<void> {
  await tx.update(lane).set({ retiredAtMs: nowMs }).where(eq(lane.id, laneId));
}
