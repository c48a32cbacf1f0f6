import type { CalendarDay } from "@/server/domain/time/calendar-day";
import {
  type AcademyTime,
  type CoachHours,
  freeTogether,
  type Lane,
  type SiteHours,
  suitedLanes,
  takenSpans,
} from "./academy-time";
import { type ArmResting, type RoomOn, type SessionRoom, sessionRoom } from "./arm-room";
import { isWithin } from "./intervals";
import { bestFirst, type FamilyWish, type FoundTime, reasonsFor, wishedSpan } from "./rank-times";
import { type SessionKind, sessionEndMs } from "./session-kind";
import { type StartTime, startTimes } from "./start-times";

/** What is looked for, and what is known. The session lies within `[fromMs, toMs)` as a whole. */
export interface TimeSearch extends AcademyTime {
  kind: SessionKind;
  durationMin: number;
  athleteIds: readonly string[];
  /** For each athlete; 0 for a session without mound throws. */
  plannedPitches: number;
  window: { fromMs: number; toMs: number };
  nowMs: number;
  /** How far ahead a start must be, in minutes; 0 for staff who book on the spot. */
  noticeMin: number;
  stepMin?: number;
  wish: FamilyWish | null;
  preferredCoachId: string | null;
  roomOn: RoomOn;
  /** The most times given in all, and of one day by the site's calendar. */
  limit: number;
  limitPerDay?: number;
}

/** A day on which an arm may not throw, and whether the same session without mound throws would find a time on it. */
export interface RefusedDay extends ArmResting {
  day: CalendarDay;
  dryWorkFits: boolean;
}

/** Starts are a quarter of an hour apart unless said otherwise (common practice, no source). */
export const DEFAULT_STEP_MIN = 15;

/** The widest window that is searched at once, in days; an hour of slack lets a clock change fall within it. */
export const MAX_WINDOW_DAYS = 92;

/**
 * The times that fit the site's hours, the coach's, a free lane, every athlete, the notice and the arms, best first:
 * room for all the planned pitches, then the preferred coach, then the family's wish, then the earliest (and the
 * order in which sites and then coaches were given). A time and a coach come once, on the first free lane that suits.
 * Days on which an arm may not throw are told apart, in order.
 * @throws RangeError when the length, the step or the window is out of range (the caller's fault)
 */
export function findTimes(search: TimeSearch): { times: FoundTime[]; refused: RefusedDay[] } {
  assertSearchable(search);
  const arms = search.athleteIds.map((id) => ({ id, plannedPitches: search.plannedPitches }));
  const armOn = rememberByDay((day) => sessionRoom(search.kind, arms, day, search.roomOn));
  const bySite = search.sites.map((site) => timesAt(search, site, armOn));
  const times = bySite.flatMap((found) => found.times);
  return {
    times: bestFirst(times, search.limit, search.limitPerDay ?? search.limit),
    refused: acrossSites(bySite.flatMap((found) => found.refused)),
  };
}

type ArmOn = (day: CalendarDay) => SessionRoom | ArmResting;

function timesAt(search: TimeSearch, site: SiteHours, armOn: ArmOn) {
  const starts = possibleStarts(search, site);
  const places = search.coaches.map((coach) => ({ coach, laneAt: firstFreeLane(search, coach, site) }));
  const wishedOn = rememberByDay((day) => wishedSpan(search.wish, day, site.hours.zone));
  const times: FoundTime[] = [];
  const dryWorkDays = new Map<CalendarDay, boolean>();
  for (const start of starts) {
    const room = armOn(start.day);
    if ("reason" in room) {
      const fits = places.some(({ laneAt }) => laneAt(start.startsAtMs, "dry_work") !== null);
      dryWorkDays.set(start.day, fits || dryWorkDays.get(start.day) === true);
      continue;
    }
    for (const { coach, laneAt } of places) {
      const laneId = laneAt(start.startsAtMs, search.kind);
      if (laneId === null) continue;
      const endsAtMs = sessionEndMs(start.startsAtMs, search.durationMin);
      const time = { ...start, endsAtMs, siteId: site.id, laneId, coachId: coach.id, room };
      times.push({ ...time, reasons: reasonsFor(time, search.preferredCoachId, wishedOn(start.day)) });
    }
  }
  return {
    times,
    refused: [...dryWorkDays].flatMap(([day, dryWorkFits]) => refusedDay(armOn(day), day, dryWorkFits)),
  };
}

function refusedDay(arm: SessionRoom | ArmResting, day: CalendarDay, dryWorkFits: boolean): RefusedDay[] {
  return "reason" in arm ? [{ ...arm, day, dryWorkFits }] : [];
}

/** One entry a day, in order of days; dry work fits the day when it fits at any site. */
function acrossSites(refused: readonly RefusedDay[]): RefusedDay[] {
  const byDay = new Map<CalendarDay, RefusedDay>();
  for (const one of refused) {
    const dryWorkFits = one.dryWorkFits || byDay.get(one.day)?.dryWorkFits === true;
    byDay.set(one.day, { ...one, dryWorkFits });
  }
  return [...byDay.values()].sort((a, b) => (a.day < b.day ? -1 : 1));
}

function possibleStarts(search: TimeSearch, site: SiteHours): StartTime[] {
  const earliestMs = Math.max(search.window.fromMs, search.nowMs + search.noticeMin * 60_000);
  const latestMs = search.window.toMs - search.durationMin * 60_000;
  return startTimes(site.hours.zone, search.stepMin ?? DEFAULT_STEP_MIN, earliestMs, latestMs + 1);
}

/** Looks up the lane for a start, or null when site, coach or athletes are not free or no lane that suits is. */
function firstFreeLane(search: TimeSearch, coach: CoachHours, site: SiteHours) {
  const { fromMs, toMs } = search.window;
  const free = freeTogether(search, { coach, site, athleteIds: search.athleteIds }, fromMs, toMs);
  const takenByLane = new Map(
    search.lanes.map((lane) => [lane.id, takenSpans(search.busy, `lane:${lane.id}`)]),
  );
  const isLaneFree = (lane: Lane, startsAtMs: number, endsAtMs: number) =>
    !takenByLane.get(lane.id)?.some((taken) => taken.startMs < endsAtMs && startsAtMs < taken.endMs);
  const lanesFor = {
    asked: suitedLanes(search.lanes, site.id, search.kind),
    dry: suitedLanes(search.lanes, site.id, "dry_work"),
  };
  return (startsAtMs: number, kind: SessionKind): string | null => {
    const endsAtMs = sessionEndMs(startsAtMs, search.durationMin);
    if (!isWithin(free, startsAtMs, endsAtMs)) return null;
    const lanes = kind === search.kind ? lanesFor.asked : lanesFor.dry;
    return lanes.find((lane) => isLaneFree(lane, startsAtMs, endsAtMs))?.id ?? null;
  };
}

function rememberByDay<Value>(work: (day: CalendarDay) => Value): (day: CalendarDay) => Value {
  const known = new Map<CalendarDay, { value: Value }>();
  return (day) => {
    const found = known.get(day) ?? { value: work(day) };
    known.set(day, found);
    return found.value;
  };
}

function assertSearchable(search: TimeSearch): void {
  sessionEndMs(0, search.durationMin);
  const stepMin = search.stepMin ?? DEFAULT_STEP_MIN;
  if (!Number.isInteger(stepMin) || stepMin < 1)
    throw new RangeError(`A step is a whole minute or more: ${stepMin}`);
  if (search.window.toMs - search.window.fromMs > (MAX_WINDOW_DAYS * 24 + 1) * 3_600_000) {
    throw new RangeError(`A search spans at most ${MAX_WINDOW_DAYS} days`);
  }
}
