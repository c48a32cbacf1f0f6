import { UNCOUNTED } from "@/server/domain/calendar/counted-pitches";
import type { SecondAdult } from "@/server/domain/calendar/second-adult";
import { SESSION_KIND, type SessionKind, throwsOnMound } from "@/server/domain/calendar/session-kind";
import type { SessionState } from "@/server/domain/calendar/session-state";
import { isOfAge } from "@/server/domain/people/person";
import { MAX_EFFORT } from "@/server/domain/throwing/load-effort";
import { addDays, ageOn } from "@/server/domain/time/calendar-day";
import type { Random } from "../seeded-random";
import { claimSlot, type Diary, isBusy, type Slot } from "./diary";
import { writeCharge } from "./price-list";
import { type Athlete, speakerFor } from "./roster";
import { logThrows } from "./throws";
import { at, keepRemark, type World } from "./world";

/** An athlete on a session: what is planned for the arm, and what it throws if the session is held. */
export interface Comer {
  athlete: Athlete;
  plannedPitches: number;
  pitches: number;
}

/** A session that is about to be written. */
export interface NewSession {
  kind: SessionKind;
  slot: Slot;
  coachId: string;
  comers: readonly Comer[];
  /** Held whatever happens: nobody cancels it or stays away. */
  isSure?: boolean;
  state?: SessionState;
  bookedDaysBefore?: number;
}

/** A session as the story of its athletes needs it. */
export interface SessionTale {
  row: World["rows"]["session"][number];
  slot: Slot;
  coachId: string;
  /** The log of each athlete that came, by athlete id; empty until it is logged. */
  logIds: Map<string, string>;
  athleteIds: string[];
}

/** Minutes after a session's end by which it has been logged. */
const LOGGED_AFTER_MIN = 6;

/** Writes a session with its claims, and what became of it by now: throws, log and charge, or why not. */
export function writeSession(diary: Diary, session: NewSession): SessionTale {
  const { world } = diary;
  const { kind, slot, coachId, comers } = session;
  const random = world.random.fork(`session ${coachId} ${slot.startsAtMs}`);
  const state = session.state ?? stateByNow(world, session, random);
  const secondAdult = chooseSecondAdult(diary, session, random);
  const [first] = comers;
  const bookedOn = addDays(slot.day, -(session.bookedDaysBefore ?? random.int(2, 12)));
  const row = {
    ...{ id: world.id("ses"), kind, state, siteId: slot.siteId, laneId: slot.laneId, coachPersonId: coachId },
    ...{ startsAtMs: slot.startsAtMs, endsAtMs: slot.endsAtMs, places: placesOf(kind) },
    ...{ secondAdultKind: secondAdult?.kind ?? null, secondAdultPersonId: secondAdult?.personId ?? null },
    bookedByPersonId: first && comers.length === 1 ? speakerFor(first.athlete, slot.day) : coachId,
    bookedAtMs: Math.min(at(world, bookedOn, random.int(480, 1290)), world.nowMs - 3_600_000),
    ...(state === "cancelled" ? cancellation(world, slot, random) : {}),
  } satisfies SessionTale["row"];
  world.rows.session.push(row);
  const tale = { row, slot, coachId, logIds: new Map<string, string>(), athleteIds: idsOf(comers) };
  if (state !== "cancelled")
    claimSlot(diary, row.id, slot, { coachId, athleteIds: idsOf(comers), secondAdult });
  for (const comer of comers) writeComer(world, tale, comer, random);
  return tale;
}

const idsOf = (comers: readonly Comer[]) => comers.map(({ athlete }) => athlete.id);
const placesOf = (kind: SessionKind) => (kind === "group" ? SESSION_KIND.group.mostAthletes : 1);

function stateByNow(world: World, { kind, slot, comers, isSure }: NewSession, random: Random): SessionState {
  const fate = random.next();
  const mayFail = !isSure && comers.length === 1;
  if (mayFail && fate < 0.04) return "cancelled";
  if (slot.endsAtMs + LOGGED_AFTER_MIN * 60_000 <= world.nowMs) {
    return mayFail && fate < 0.07 ? "no_show" : "logged";
  }
  return slot.startsAtMs <= world.nowMs && throwsOnMound(kind) ? "checked_in" : "booked";
}

function cancellation(world: World, slot: Slot, random: Random) {
  const reason = random.pick([
    "Down with a cold.",
    "School event came up.",
    "No ride today.",
    "Thunderstorm.",
  ]);
  const cancelledAtMs = Math.min(slot.startsAtMs - random.int(3, 40) * 3_600_000, world.nowMs - 1_800_000);
  return { cancelledAtMs, cancelRemarkId: keepRemark(world, reason) };
}

/** A guardian who is not on the staff watches; now and then it is the front desk. */
function chooseSecondAdult(diary: Diary, { slot, comers }: NewSession, random: Random): SecondAdult | null {
  const [only, ...others] = comers;
  if (!only || others.length > 0 || isOfAge(only.athlete.bornOn, slot.day)) return null;
  const { priya, ...coaches } = diary.world.staffIds;
  const deskIsFree = !isBusy(diary, `coach:${priya}`, slot.day, slot);
  if (deskIsFree && random.chance(0.15)) return { kind: "staff", personId: priya };
  const staff: string[] = Object.values(coaches);
  const [guardian] = only.athlete.guardianIds.filter((id) => !staff.includes(id));
  return guardian ? { kind: "guardian", personId: guardian } : null;
}

function writeComer(world: World, tale: SessionTale, comer: Comer, random: Random): void {
  const { row, slot } = tale;
  const { athlete, plannedPitches } = comer;
  world.rows.sessionAthlete.push({ sessionId: row.id, athleteId: athlete.id, plannedPitches });
  const throwKind = row.kind === "bullpen" ? "bullpen" : "lesson";
  if (row.state === "booked" || row.state === "checked_in") {
    if (plannedPitches > 0) {
      const plan = { id: row.id, plannedOn: slot.day, kind: throwKind, pitches: plannedPitches } as const;
      athlete.arm.planned.push({ ...plan, teamId: null });
    }
  }
  if (row.state === "checked_in" || row.state === "logged") writeCheckIn(world, tale, athlete, random);
  if (row.state === "logged") writeLog(world, tale, comer, throwKind, random);
}

function writeCheckIn(world: World, { row, coachId }: SessionTale, athlete: Athlete, random: Random): void {
  if (!throwsOnMound(row.kind)) return;
  world.rows.checkIn.push({
    ...{ id: world.id("chk"), sessionId: row.id, athleteId: athlete.id },
    ...{ thrownSince: random.chance(0.3), pain: false, askedByPersonId: coachId },
    atMs: Math.min(row.startsAtMs + 120_000, world.nowMs),
  });
}

function writeLog(
  world: World,
  tale: SessionTale,
  { athlete, pitches }: Comer,
  throwKind: "bullpen" | "lesson",
  random: Random,
): void {
  const { row, slot, coachId } = tale;
  const loggedAtMs = Math.min(row.endsAtMs + random.int(1, 5) * 60_000, world.nowMs);
  const stayedAway = tale.athleteIds.length > 1 && random.chance(0.05);
  const id = world.id("slg");
  world.rows.sessionLog.push({
    ...{ id, sessionId: row.id, athleteId: athlete.id, attendance: stayedAway ? "no_show" : "came" },
    minutes: stayedAway ? 0 : (row.endsAtMs - row.startsAtMs) / 60_000,
    pitches: stayedAway ? 0 : pitches,
    effort: stayedAway ? null : effortFor(world.rows.sessionLog.length, pitches),
    ...(stayedAway ? {} : countsOf(world.rows.sessionLog.length, pitches, ageOn(athlete.bornOn, slot.day))),
    remarkId: !stayedAway && random.chance(0.35) ? keepRemark(world, random.pick(LOG_NOTES)) : null,
    ...{ loggedByPersonId: coachId, loggedAtMs },
  });
  if (stayedAway) return;
  tale.logIds.set(athlete.id, id);
  if (pitches > 0) {
    const throws = { day: slot.day, kind: throwKind, pitches, sessionId: row.id };
    logThrows(world, athlete, { ...throws, reportedBy: coachId, reportedAtMs: loggedAtMs });
  }
  const work = { kind: row.kind, athleteId: athlete.id, coachId, siteId: row.siteId };
  writeCharge(world, { ...work, whenMs: row.startsAtMs, atMs: loggedAtMs, source: { sessionId: row.id } });
}

/** Two of three bullpens have their strikes counted, one of two a radar beside them; faster with age. */
function countsOf(place: number, pitches: number, age: number) {
  if (pitches === 0) return UNCOUNTED;
  const strikes = place % 3 === 0 ? null : Math.round(pitches * (0.52 + ((place * 7) % 18) / 100));
  if (place % 2 === 0) return { ...UNCOUNTED, strikes };
  const topSpeed = Math.round((30 + 2.6 * age) * 10 + ((place * 11) % 40)) / 10;
  return { strikes, topSpeed, speedUnit: "mph" as const };
}

/** The more pitches, the harder; every ninth time a coach forgot to ask. */
function effortFor(logsBefore: number, pitches: number): number | null {
  return logsBefore % 9 === 8 ? null : Math.min(MAX_EFFORT, 2 + Math.round(pitches / 8) + (logsBefore % 2));
}

const LOG_NOTES = [
  "Good rhythm from the tenth pitch on.",
  "Tired legs today; kept it short.",
  "Held the finish on most of them.",
  "Best direction so far this season.",
  "Slow start, then the hands found their time.",
  "Worked from the stretch the second half.",
  "Talked through the plan for the next clip.",
];
