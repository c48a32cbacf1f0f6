import { eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { site, siteClosure, siteHours } from "@/db/schema/sites";
import { Refusal } from "@/server/domain/errors/refusal";
import { dueAtMs, resumePromise } from "@/server/domain/reviews/promise";
import type { OpenHours } from "@/server/domain/time/open-hours";
import { findSettings } from "./academy-settings";

/** The hours in which a site keeps its promises, under its name. */
export interface PromiseHours extends OpenHours {
  siteName: string;
}

/** When a site is open: its zone, its week and every day it is closed. @throws Error when there is no such site */
export async function promiseHours(db: Db, siteId: string): Promise<PromiseHours> {
  const [place] = await db.select({ name: site.name, zone: site.zone }).from(site).where(eq(site.id, siteId));
  if (!place) throw new Error(`There is no site ${siteId}.`);
  const week = await db
    .select({ weekday: siteHours.weekday, opensMin: siteHours.opensMin, closesMin: siteHours.closesMin })
    .from(siteHours)
    .where(eq(siteHours.siteId, siteId));
  const closures = await db
    .select({ day: siteClosure.closedOn })
    .from(siteClosure)
    .where(eq(siteClosure.siteId, siteId));
  const closedOn = new Set(closures.map((closure) => closure.day));
  return { siteName: place.name, zone: place.zone, week, closedOn };
}

/**
 * When a step that begins to be owed at `nowMs` is due under the academy's promise.
 * @returns epoch milliseconds
 * @throws Refusal `hours_missing` when the site has no opening hours to count in
 */
export async function promisedAtMs(db: Db, hours: PromiseHours, nowMs: number): Promise<number> {
  const settings = await findSettings(db);
  if (!settings) throw new Error("There is no academy yet.");
  const promise = { kind: settings.promiseKind, amount: settings.promiseAmount };
  return countable(dueAtMs(promise, hours, nowMs), hours);
}

/**
 * When a promise that a retake paused is due, once the new clip is in.
 * @returns epoch milliseconds
 * @throws Refusal `hours_missing` when the site has no opening hours to count in
 */
export function resumedAtMs(hours: PromiseHours, pausedOpenMs: number, nowMs: number): number {
  return countable(resumePromise(hours, pausedOpenMs, nowMs), hours);
}

function countable(atMs: number | null, hours: PromiseHours): number {
  if (atMs === null) throw new Refusal({ reason: "hours_missing", siteName: hours.siteName });
  return atMs;
}
