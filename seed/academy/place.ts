import { checkpointRow } from "@/server/data/checkpoints";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { type AcademySettings, STARTING_SETTINGS } from "@/server/domain/people/academy-settings";
import { type CalendarDay, instantOf } from "@/server/domain/time/calendar-day";
import type { WeeklyHours } from "@/server/domain/time/open-hours";
import { ACADEMY_NAME, SITES, type SiteKey } from "../people";
import { holidaysAround } from "./holidays";
import { dayFromToday, FOUNDED_DAYS, type World } from "./world";

/** The demo academy's settings: clips are kept for three weeks, so that only the latest need to be drawn. */
export const DEMO_SETTINGS: AcademySettings = {
  ...STARTING_SETTINGS,
  name: ACADEMY_NAME,
  clipRetentionDays: 21,
  replySpanDays: 14,
};

const week = (weekdays: readonly number[], opensMin: number, closesMin: number): WeeklyHours[] =>
  weekdays.map((weekday) => ({ weekday, opensMin, closesMin }));

const HOURS: Record<SiteKey, WeeklyHours[]> = {
  mill: [...week([1, 2, 3, 4, 5], 720, 1260), ...week([6], 540, 1080), ...week([7], 600, 960)],
  yard: [...week([1, 2, 3, 4, 5], 840, 1260), ...week([6], 540, 1020)],
};

const LANES = [
  { site: "mill", name: "Mound 1", kind: "mound" },
  { site: "mill", name: "Mound 2", kind: "mound" },
  { site: "mill", name: "Flat lane", kind: "flat" },
  { site: "yard", name: "Mound 3", kind: "mound" },
  { site: "yard", name: "Long lane", kind: "flat" },
] as const;

/** Puts up the academy, its two sites with hours, closures and lanes, and its checkpoints. */
export function buildPlace(world: World): void {
  const startedOn = dayFromToday(world, -FOUNDED_DAYS);
  world.rows.academy.push({
    id: "academy",
    ...DEMO_SETTINGS,
    isDemo: true,
    createdAtMs: instantOf(startedOn, 600, world.zone),
  });
  for (const key of ["mill", "yard"] as const) buildSite(world, key);
  for (const { site, name, kind } of LANES) {
    world.rows.lane.push({ id: world.id("lan"), siteId: world.siteIds[site], name, kind });
  }
  STARTING_LIBRARY.forEach((checkpoint, position) => {
    world.rows.checkpoint.push({ ...checkpointRow(checkpoint), position });
  });
}

function buildSite(world: World, key: SiteKey): void {
  const siteId = world.id("sit");
  world.siteIds[key] = siteId;
  world.rows.site.push({ id: siteId, zone: world.zone, ...SITES[key] });
  for (const opening of HOURS[key]) world.rows.siteHours.push({ id: world.id("shr"), siteId, ...opening });
  const closedOn = new Set<CalendarDay>();
  for (const { day, reason } of holidaysAround(world)) {
    closedOn.add(day);
    world.rows.siteClosure.push({ id: world.id("scl"), siteId, closedOn: day, reason });
  }
  world.siteHours.set(siteId, { zone: world.zone, week: HOURS[key], closedOn });
}
