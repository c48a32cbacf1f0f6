import { SESSION_KIND, type SessionKind, throwsOnMound } from "@/server/domain/calendar/session-kind";
import { addDays, type CalendarDay, daysBetween, weekdayOf } from "@/server/domain/time/calendar-day";
import type { Random } from "../seeded-random";
import { roomOn } from "./arm";
import { type Diary, findSlot, worksOn } from "./diary";
import type { Athlete } from "./roster";
import { type Comer, type NewSession, type SessionTale, writeSession } from "./session-rows";
import { AHEAD_DAYS, dayFromToday, SEASON_DAYS, type World } from "./world";

/** The weeks of the season, Mondays, the two weeks ahead included. */
export function mondaysOf(world: World): CalendarDay[] {
  const first = dayFromToday(world, -SEASON_DAYS + 4);
  const start = addDays(first, 8 - weekdayOf(first));
  const weeks = Math.ceil((daysBetween(start, world.today) + AHEAD_DAYS) / 7);
  return Array.from({ length: weeks }, (_, index) => addDays(start, 7 * index));
}

/** Every week's sessions, one athlete after the other in an order that changes by the week. */
export function buildWeeks(diary: Diary, athletes: readonly Athlete[], done: SessionTale[]): void {
  const { world } = diary;
  for (const monday of mondaysOf(world)) {
    const random = world.random.fork(`week ${daysBetween(world.today, monday)}`);
    for (const athlete of random.shuffled(athletes)) {
      if (!random.chance(athlete.keenness)) continue;
      const days = daysToComeOn(world, athlete, monday);
      const tale = hasSessionIn(done, athlete, days) ? null : bookOne(diary, athlete, days, random);
      if (tale) done.push(tale);
    }
  }
}

/** The days of the week on which the athlete may come; an arm that has fallen silent has stayed away since. */
function daysToComeOn(world: World, athlete: Athlete, monday: CalendarDay): CalendarDay[] {
  const first = addDays(athlete.joinedOn, 3);
  const silentFrom = athlete.part === "silent" ? athlete.arm.blocked[0]?.from : undefined;
  const last = silentFrom ?? dayFromToday(world, AHEAD_DAYS + 1);
  return weekDays(monday).filter((day) => first <= day && day < last);
}

/** Saturday mornings: a group of the youngest. */
export function buildGroups(diary: Diary, athletes: readonly Athlete[], done: SessionTale[]): void {
  const { world } = diary;
  const coachId = world.staffIds.ines;
  const young = athletes.filter((athlete) => athlete.age <= 11);
  for (const monday of mondaysOf(world)) {
    const day = addDays(monday, 5);
    if (day > dayFromToday(world, AHEAD_DAYS) || !worksOn(diary, coachId, day)) continue;
    const random = world.random.fork(`group ${daysBetween(world.today, day)}`);
    const fit = random
      .shuffled(young)
      .filter((athlete) => athlete.joinedOn < day && roomOn(athlete.arm, day) >= 15)
      .slice(0, random.int(4, 6));
    if (fit.length < 3) continue;
    const comers = fit.map((athlete) => ({ athlete, plannedPitches: 15, pitches: random.int(11, 15) }));
    const wish = { day, coachId, kind: "group", durationMin: 90, wishedMin: 570 } as const;
    const slot = findSlot(diary, { ...wish, athleteIds: fit.map(({ id }) => id) });
    if (slot) done.push(writeSession(diary, { kind: "group", slot, coachId, comers, isSure: true }));
  }
}

/**
 * Books one session on the first of the days on which coach, lane and arm are free; on a day of rest it is dry work
 * half of the time. Nothing when no day fits.
 */
export function bookOne(
  diary: Diary,
  athlete: Athlete,
  days: readonly CalendarDay[],
  random: Random,
  fixed: Fixed = {},
): SessionTale | null {
  const kind = fixed.kind ?? kindFor(random);
  const wishedMin = fixed.wishedMin ?? wishedStart(athlete, random);
  const inOrder = random.shuffled(days).filter((day) => worksOn(diary, athlete.coachId, day));
  const booked = bookKind(diary, athlete, inOrder, random, { ...fixed, kind, wishedMin });
  if (booked || fixed.kind || !random.chance(0.5)) return booked;
  return bookKind(diary, athlete, inOrder, random, { ...fixed, kind: "dry_work", wishedMin });
}

/** What is settled about a session before a time is looked for. */
type Fixed = Partial<Omit<NewSession, "slot" | "coachId" | "comers">> & { wishedMin?: number };

function bookKind(
  diary: Diary,
  athlete: Athlete,
  days: readonly CalendarDay[],
  random: Random,
  fixed: Fixed & { kind: SessionKind; wishedMin: number },
): SessionTale | null {
  const { kind, wishedMin } = fixed;
  const { coachId } = athlete;
  const athleteIds = [athlete.id];
  for (const day of days) {
    const comer = comerFor(athlete, kind, day, random);
    if (!comer) continue;
    const { durationMin } = SESSION_KIND[kind];
    const slot = findSlot(diary, { day, coachId, athleteIds, kind, durationMin, wishedMin });
    if (slot) return writeSession(diary, { ...fixed, slot, coachId, comers: [comer] });
  }
  return null;
}

/** The athlete with the pitches that the arm has room for on the day, or null when it has none. */
function comerFor(athlete: Athlete, kind: SessionKind, day: CalendarDay, random: Random): Comer | null {
  if (!throwsOnMound(kind)) return { athlete, plannedPitches: 0, pitches: 0 };
  const share = athlete.age < 10 ? 0.55 : athlete.age < 13 ? 0.75 : 1;
  const plannedPitches = Math.round((SESSION_KIND[kind].plannedPitches * share) / 5) * 5;
  const room = roomOn(athlete.arm, day);
  if (room < plannedPitches) return null;
  return { athlete, plannedPitches, pitches: Math.min(room, plannedPitches + random.int(-7, 3)) };
}

function kindFor(random: Random): SessionKind {
  const roll = random.next();
  if (roll < 0.52) return "lesson";
  if (roll < 0.86) return "bullpen";
  return roll < 0.93 ? "assessment" : "dry_work";
}

function wishedStart(athlete: Athlete, random: Random): number {
  return athlete.age >= 18 ? random.int(12, 15) * 60 : random.int(15, 19) * 60 + random.pick([0, 30]);
}

function weekDays(monday: CalendarDay): CalendarDay[] {
  return Array.from({ length: 7 }, (_, index) => addDays(monday, index));
}

function hasSessionIn(tales: readonly SessionTale[], { id }: Athlete, days: readonly CalendarDay[]): boolean {
  const [first = "", last = ""] = [days[0], days.at(-1)];
  return tales.some(({ slot, athleteIds }) => {
    return first <= slot.day && slot.day <= last && athleteIds.includes(id);
  });
}
