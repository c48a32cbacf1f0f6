import type { ArmRoom } from "@/server/domain/calendar/arm-room";
import type { TimeSearch } from "@/server/domain/calendar/slot-finder";
import type { WeeklyHours } from "@/server/domain/time/open-hours";
import { dayOfWall, type MinuteClock, minuteOfWall, weekdayOfWall } from "./minute-clock";
import { clockFor } from "./random-academy";

/** A fitting time as the slow search sees it. */
export interface SlowTime {
  startsAtMs: number;
  day: string;
  siteId: string;
  laneId: string;
  coachId: string;
  isFull: boolean;
  isSameCoach: boolean;
  isWished: boolean;
}

/** The slow, plain finder: every start, every minute of it looked at one by one, for everyone who must be free. */
export function slowTimes(search: TimeSearch, spanStart: string) {
  const found = search.sites.flatMap((site) => {
    const clock = clockFor(site.hours.zone, spanStart);
    const places = search.coaches.map((coach) => freeMinutes(search, clock, site, coach));
    return startMinutes(clock, search).map((index) =>
      lookAt(search, clock, { siteId: site.id, places, index }),
    );
  });
  const refused = new Map<string, boolean>();
  for (const { day, isStopped, times } of found) {
    if (isStopped) refused.set(day, times.length > 0 || refused.get(day) === true);
  }
  const times = found.flatMap((one) => (one.isStopped ? [] : one.times));
  return { times: rank(times, search), refused };
}

interface SlowPlace {
  coachId: string;
  free: ReadonlySet<number>;
  lanes: readonly { id: string; kind: string; taken: ReadonlySet<number> }[];
}

/** At one start: whether an arm stops it, and each coach with whom it fits (as dry work, when an arm stops it). */
function lookAt(
  search: TimeSearch,
  clock: MinuteClock,
  at: { siteId: string; places: readonly SlowPlace[]; index: number },
) {
  const { siteId, places, index } = at;
  const day = dayOfWall(clock.walls[index] ?? Number.NaN);
  const isDry = search.kind === "dry_work";
  const rooms = search.athleteIds.map((id) => search.roomOn(id, day, search.plannedPitches));
  const isStopped = !isDry && rooms.some(isStop);
  const laneKinds = isStopped || isDry ? ["flat", "mound"] : ["mound"];
  const minutes = Array.from({ length: search.durationMin }, (_, offset) => index + offset);
  const times = places.flatMap(({ coachId, free, lanes }): SlowTime[] => {
    if (!minutes.every((minute) => free.has(minute))) return [];
    const suited = laneKinds.flatMap((kind) => lanes.filter((lane) => lane.kind === kind));
    const laneId = suited.find((lane) => !minutes.some((minute) => lane.taken.has(minute)))?.id;
    if (laneId === undefined) return [];
    return [
      {
        ...{ startsAtMs: clock.fromMs + index * 60_000, day, siteId, laneId, coachId },
        isFull:
          isDry || rooms.every((room) => room.pitches === null || room.pitches >= search.plannedPitches),
        isSameCoach: coachId === search.preferredCoachId,
        isWished: isWished(clock, search, index),
      },
    ];
  });
  return { day, isStopped, times };
}

/** The minutes in which site, coach and athletes are free together, and those in which each lane is not. */
function freeMinutes(
  search: TimeSearch,
  clock: MinuteClock,
  site: TimeSearch["sites"][number],
  coach: TimeSearch["coaches"][number],
): SlowPlace {
  const works = new Set<number>();
  for (const { siteId, week } of coach.hours) {
    if (siteId === site.id) for (const minute of openMinutes(clock, week, new Set())) works.add(minute);
  }
  const people = [`coach:${coach.id}`, ...search.athleteIds.map((id) => `athlete:${id}`)];
  const gone = new Set(people.flatMap((resource) => [...takenMinutes(search, clock, resource)]));
  for (const { startMs, endMs } of coach.absences) {
    for (const minute of minutesOf(clock, startMs, endMs)) gone.add(minute);
  }
  const open = openMinutes(clock, site.hours.week, site.hours.closedOn);
  const free = new Set([...open].filter((minute) => works.has(minute) && !gone.has(minute)));
  const lanes = search.lanes
    .filter((lane) => lane.siteId === site.id)
    .map(({ id, kind }) => ({ id, kind, taken: takenMinutes(search, clock, `lane:${id}`) }));
  return { coachId: coach.id, free, lanes };
}

function takenMinutes(search: TimeSearch, clock: MinuteClock, resource: string): Set<number> {
  const claims = search.busy.filter((claim) => claim.resource === resource);
  return new Set(claims.flatMap(({ startsAtMs, endsAtMs }) => minutesOf(clock, startsAtMs, endsAtMs)));
}

function minutesOf(clock: MinuteClock, startMs: number, endMs: number): number[] {
  const first = (startMs - clock.fromMs) / 60_000;
  return Array.from({ length: (endMs - startMs) / 60_000 }, (_, offset) => first + offset);
}

function startMinutes(clock: MinuteClock, search: TimeSearch): number[] {
  const fromMs = Math.max(search.window.fromMs, search.nowMs + search.noticeMin * 60_000);
  const toMs = search.window.toMs - search.durationMin * 60_000;
  return [...clock.walls.entries()]
    .filter(
      ([index, wall]) => (wall % 1440) % (search.stepMin ?? 15) === 0 && clock.firstShown.get(wall) === index,
    )
    .map(([index]) => index)
    .filter((index) => clock.fromMs + index * 60_000 >= fromMs && clock.fromMs + index * 60_000 <= toMs);
}

function openMinutes(
  clock: MinuteClock,
  week: readonly WeeklyHours[],
  closedOn: ReadonlySet<string>,
): Set<number> {
  const firstDay = Math.ceil((clock.walls[0] ?? Number.NaN) / 1440);
  const midnights = Array.from({ length: 7 }, (_, ahead) => (firstDay + ahead) * 1440);
  const openings = midnights
    .filter((midnight) => !closedOn.has(dayOfWall(midnight)) && clock.firstShown.has(midnight + 1439))
    .flatMap((midnight) =>
      week
        .filter((hours) => hours.weekday === weekdayOfWall(midnight) && hours.opensMin < hours.closesMin)
        .map((hours) =>
          [midnight + hours.opensMin, midnight + hours.closesMin].map((wall) => minuteOfWall(clock, wall)),
        ),
    );
  return new Set(
    openings.flatMap(([from = 0, to = 0]) =>
      Array.from({ length: Math.max(0, to - from) }, (_, offset) => from + offset),
    ),
  );
}

function isStop(room: ArmRoom): boolean {
  return room.status !== "no_published_limit" && (room.pitches ?? 0) === 0;
}

function isWished(clock: MinuteClock, search: TimeSearch, index: number): boolean {
  if (search.wish === null) return false;
  const wall = clock.walls[index] ?? Number.NaN;
  const midnight = wall - (wall % 1440);
  const { weekdays, fromMin, toMin } = search.wish;
  const isDay = weekdays.length === 0 || weekdays.includes(weekdayOfWall(wall));
  const isAfter = index >= minuteOfWall(clock, midnight + fromMin);
  return isDay && isAfter && index + search.durationMin <= minuteOfWall(clock, midnight + toMin);
}

function rank(times: readonly SlowTime[], search: TimeSearch): SlowTime[] {
  const score = (time: SlowTime) =>
    (time.isFull ? 4 : 0) + (time.isSameCoach ? 2 : 0) + (time.isWished ? 1 : 0);
  const left = times.map((time, order) => ({ time, order }));
  left.sort(
    (a, b) => score(b.time) - score(a.time) || a.time.startsAtMs - b.time.startsAtMs || a.order - b.order,
  );
  const chosen: SlowTime[] = [];
  for (const { time } of left) {
    const ofDay = chosen.filter(({ day }) => day === time.day).length;
    if (chosen.length < search.limit && ofDay < (search.limitPerDay ?? search.limit)) chosen.push(time);
  }
  return chosen;
}
