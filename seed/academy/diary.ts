import { type ClaimResource, claimsOf, overlaps, type Span } from "@/server/domain/calendar/claims";
import type { SecondAdult } from "@/server/domain/calendar/second-adult";
import { SESSION_KIND, type SessionKind } from "@/server/domain/calendar/session-kind";
import { type CalendarDay, dayOf, weekdayOf } from "@/server/domain/time/calendar-day";
import { openingsOn } from "@/server/domain/time/open-hours";
import type { CoachKey, SiteKey } from "../people";
import { at, dayFromToday, type World } from "./world";

interface CoachDay {
  site: SiteKey;
  startsMin: number;
  endsMin: number;
}

/** Each coach's week, Monday first; null is a day off. */
const WEEKS: Record<CoachKey, readonly (CoachDay | null)[]> = {
  tamar: [
    { site: "mill", startsMin: 720, endsMin: 1200 },
    { site: "mill", startsMin: 720, endsMin: 1200 },
    { site: "yard", startsMin: 840, endsMin: 1200 },
    { site: "mill", startsMin: 720, endsMin: 1260 },
    { site: "mill", startsMin: 780, endsMin: 1200 },
    { site: "mill", startsMin: 540, endsMin: 960 },
    { site: "mill", startsMin: 600, endsMin: 840 },
  ],
  dell: [
    { site: "mill", startsMin: 720, endsMin: 1080 },
    null,
    { site: "mill", startsMin: 720, endsMin: 1080 },
    null,
    { site: "mill", startsMin: 720, endsMin: 1140 },
    null,
    { site: "mill", startsMin: 600, endsMin: 960 },
  ],
  ruben: [
    { site: "yard", startsMin: 840, endsMin: 1260 },
    { site: "yard", startsMin: 840, endsMin: 1260 },
    { site: "yard", startsMin: 840, endsMin: 1260 },
    null,
    { site: "yard", startsMin: 840, endsMin: 1260 },
    { site: "yard", startsMin: 540, endsMin: 900 },
    null,
  ],
  ines: [
    null,
    { site: "mill", startsMin: 840, endsMin: 1260 },
    { site: "mill", startsMin: 840, endsMin: 1260 },
    { site: "yard", startsMin: 840, endsMin: 1200 },
    { site: "mill", startsMin: 840, endsMin: 1260 },
    { site: "mill", startsMin: 540, endsMin: 1020 },
    null,
  ],
};

/** Who is where and when, as it fills up. */
export interface Diary {
  world: World;
  taken: Map<string, Span[]>;
}

/** A start that everybody can keep. */
export interface Slot extends Span {
  day: CalendarDay;
  siteId: string;
  laneId: string;
}

/** What a slot is looked for. The second adult, when of the staff, must be free as well. */
export interface SlotWish {
  day: CalendarDay;
  coachId: string;
  athleteIds: readonly string[];
  kind: SessionKind;
  durationMin: number;
  /** Minutes since midnight; the nearest free start is taken. */
  wishedMin: number;
}

/** Writes the coaches' hours and absences, and opens the diary. */
export function openDiary(world: World): Diary {
  for (const [key, days] of Object.entries(WEEKS) as [CoachKey, readonly (CoachDay | null)[]][]) {
    days.forEach((hours, index) => {
      if (!hours) return;
      const { site, startsMin, endsMin } = hours;
      const coachPersonId = world.staffIds[key];
      const row = { coachPersonId, siteId: world.siteIds[site], weekday: index + 1, startsMin, endsMin };
      world.rows.coachHours.push({ id: world.id("chr"), ...row });
    });
  }
  const diary: Diary = { world, taken: new Map() };
  addAbsence(diary, "dell", -62, -55);
  addAbsence(diary, "ruben", 9, 11);
  return diary;
}

function addAbsence(diary: Diary, key: CoachKey, fromDays: number, toDays: number): void {
  const { world } = diary;
  const coachPersonId = world.staffIds[key];
  const startsAtMs = at(world, dayFromToday(world, fromDays), 0);
  const endsAtMs = at(world, dayFromToday(world, toDays), 0);
  world.rows.coachAbsence.push({ id: world.id("cab"), coachPersonId, startsAtMs, endsAtMs });
  for (let days = fromDays; days < toDays; days += 1) {
    const day = dayFromToday(world, days);
    take(diary, `coach:${coachPersonId}`, day, {
      startsAtMs: at(world, day, 0),
      endsAtMs: at(world, day, 1440),
    });
  }
}

/** Whether the coach has hours on the day and the site is open then. */
export function worksOn({ world }: Diary, coachId: string, day: CalendarDay): boolean {
  const hours = coachDay(world, coachId, day);
  const open = hours && world.siteHours.get(world.siteIds[hours.site]);
  return open ? openingsOn(open, day).length > 0 : false;
}

/** The free start nearest to the wish on that day, on the half hour, or null when there is none. */
export function findSlot(diary: Diary, wish: SlotWish): Slot | null {
  const { world } = diary;
  const hours = coachDay(world, wish.coachId, wish.day);
  if (!hours || !worksOn(diary, wish.coachId, wish.day)) return null;
  const siteId = world.siteIds[hours.site];
  const people: ClaimResource[] = [
    `coach:${wish.coachId}`,
    ...wish.athleteIds.map((id) => `athlete:${id}` as const),
  ];
  for (const startMin of startsByWish(hours, wish)) {
    const startsAtMs = at(world, wish.day, startMin);
    const span = { startsAtMs, endsAtMs: startsAtMs + wish.durationMin * 60_000 };
    if (people.some((resource) => isBusy(diary, resource, wish.day, span))) continue;
    const laneId = freeLane(diary, siteId, wish, span);
    if (laneId) return { ...span, day: wish.day, siteId, laneId };
  }
  return null;
}

/** Takes a slot for good and writes its claims. */
export function claimSlot(
  diary: Diary,
  sessionId: string,
  slot: Slot,
  who: { coachId: string; athleteIds: readonly string[]; secondAdult: SecondAdult | null },
): void {
  for (const claim of claimsOf({ ...slot, ...who })) {
    take(diary, claim.resource, slot.day, claim);
    diary.world.rows.claim.push({ id: diary.world.id("clm"), sessionId, ...claim });
  }
}

/** Whether something is taken within a span of the day. */
export function isBusy(diary: Diary, resource: ClaimResource, day: CalendarDay, span: Span): boolean {
  return (diary.taken.get(`${resource} ${day}`) ?? []).some((other) => overlaps(other, span));
}

/** The day of a slot at the sites. */
export const dayAtSites = (world: World, instantMs: number): CalendarDay => dayOf(instantMs, world.zone);

function take(diary: Diary, resource: ClaimResource, day: CalendarDay, { startsAtMs, endsAtMs }: Span): void {
  const key = `${resource} ${day}`;
  diary.taken.set(key, [...(diary.taken.get(key) ?? []), { startsAtMs, endsAtMs }]);
}

function coachDay(world: World, coachId: string, day: CalendarDay): CoachDay | null {
  const key = (Object.keys(WEEKS) as CoachKey[]).find((one) => world.staffIds[one] === coachId);
  return (key && WEEKS[key][weekdayOf(day) - 1]) ?? null;
}

function startsByWish({ startsMin, endsMin }: CoachDay, { durationMin, wishedMin }: SlotWish): number[] {
  const starts: number[] = [];
  for (let start = startsMin; start + durationMin <= endsMin; start += 30) starts.push(start);
  return starts.sort((a, b) => Math.abs(a - wishedMin) - Math.abs(b - wishedMin) || a - b);
}

function freeLane(diary: Diary, siteId: string, wish: SlotWish, span: Span): string | null {
  const lanes = SESSION_KIND[wish.kind].laneKinds.flatMap((kind) =>
    diary.world.rows.lane.filter((lane) => lane.siteId === siteId && lane.kind === kind),
  );
  return lanes.find(({ id }) => !isBusy(diary, `lane:${id}`, wish.day, span))?.id ?? null;
}
