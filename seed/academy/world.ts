import { type AcademyRows, noAcademyRows } from "@/server/data/academy-rows";
import type { AuditedAct } from "@/server/data/audit";
import { addDays, type CalendarDay, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import type { OpenHours } from "@/server/domain/time/open-hours";
import type { DemoClip } from "../demo-clip";
import { ACADEMY_ZONE, type SiteKey, type StaffKey } from "../people";
import { type Random, seededRandom } from "../seeded-random";

/** How far back the demo's season goes, in days: nine months. */
export const SEASON_DAYS = 270;

/** How long the academy has been there, in days: longer than any of its athletes. */
export const FOUNDED_DAYS = 1100;

/** How far ahead sessions are booked, in days. */
export const AHEAD_DAYS = 14;

/** What is being built, and what everything is built from. Parts add rows to it one after the other. */
export interface World {
  today: CalendarDay;
  nowMs: number;
  zone: string;
  random: Random;
  rows: AcademyRows;
  acts: AuditedAct[];
  demoClips: DemoClip[];
  siteIds: Record<SiteKey, string>;
  siteHours: Map<string, OpenHours>;
  staffIds: Record<StaffKey, string>;
  /** A fresh id as the product makes them, from the seed. */
  id: (prefix: string) => string;
  /** A name as the clip store makes them, from the seed: 32 hexadecimal digits. */
  fileName: () => string;
}

/** What an academy is made from. Without an instant it is ten past two in the afternoon of the day. */
export interface AcademyInput {
  seed: number;
  today: CalendarDay;
  nowMs?: number | undefined;
}

const ID_LETTERS = "0123456789abcdefghjkmnpqrstvwxyz";

/**
 * A world without a row.
 * @throws RangeError when the instant is not on the day by the sites' clock
 */
export function newWorld({ seed, today, nowMs = instantOf(today, 850, ACADEMY_ZONE) }: AcademyInput): World {
  if (dayOf(nowMs, ACADEMY_ZONE) !== today) throw new RangeError(`The instant is not on ${today}.`);
  const random = seededRandom(String(seed));
  const idRandom = random.fork("ids");
  const letters = (alphabet: string, length: number) =>
    Array.from({ length }, () => alphabet[idRandom.int(0, alphabet.length - 1)]).join("");
  return {
    today,
    nowMs,
    zone: ACADEMY_ZONE,
    random,
    rows: noAcademyRows(),
    acts: [],
    demoClips: [],
    siteIds: { mill: "", yard: "" },
    siteHours: new Map(),
    staffIds: { tamar: "", dell: "", ruben: "", ines: "", priya: "" },
    id: (prefix) => `${prefix}_${letters(ID_LETTERS, 20)}`,
    fileName: () => letters("0123456789abcdef", 32),
  };
}

/** The day that lies `days` after today (negative: before). */
export const dayFromToday = (world: World, days: number): CalendarDay => addDays(world.today, days);

/** The instant of a wall-clock minute of a day at the sites. */
export const at = (world: World, day: CalendarDay, minute: number): number =>
  instantOf(day, minute, world.zone);

/** Keeps free text and gives the id to refer to it by. */
export function keepRemark(world: World, text: string): string {
  const id = world.id("rmk");
  world.rows.remark.push({ id, text });
  return id;
}
