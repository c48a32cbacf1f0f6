import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { type SessionKind, throwsOnMound } from "./session-kind";

/**
 * What the rule book leaves an arm on one day, as the throwing rooms work it out: at most `pitches` (never a
 * permission), resting, stopped by pain, or of an age for which no limit is published (`pitches` null).
 * `firstFreeDay` is null when it is not asked for or nobody can tell.
 */
export interface ArmRoom {
  status: "at_most" | "resting" | "pain" | "no_published_limit";
  pitches: number | null;
  firstFreeDay: CalendarDay | null;
}

/** Asks the rule book for one athlete, one day of the site's calendar, and the pitches planned on it. */
export type RoomOn = (athleteId: string, day: CalendarDay, plannedPitches: number) => ArmRoom;

/** An athlete of a session and the pitches planned for that arm. */
export interface PlannedArm {
  id: string;
  plannedPitches: number;
}

/** The room at a time that can be offered: the tightest limit among its athletes, or why there is none to name. */
export type SessionRoom =
  | { status: "at_most"; atMost: number; athleteId: string; holdsPlanned: boolean }
  | { status: "no_published_limit" }
  | { status: "no_throws" };

/** An arm that stops mound throws on the day. `firstFreeDay` null: nobody can tell yet (pain, say). */
export interface ArmResting {
  reason: "arm_resting";
  athleteId: string;
  status: "resting" | "pain";
  firstFreeDay: CalendarDay | null;
}

/**
 * What the arms of a session leave on a day. One arm that may not throw stops the session; of several, the one that
 * stops it longest is named (pain before rest). A limit that is used up counts as resting. Otherwise the arm with the
 * least to spare over its plan is named. Dry work never asks.
 */
export function sessionRoom(
  kind: SessionKind,
  arms: readonly PlannedArm[],
  day: CalendarDay,
  roomOn: RoomOn,
): SessionRoom | ArmResting {
  if (!throwsOnMound(kind)) return { status: "no_throws" };
  const rooms = arms.map((arm) => ({ arm, room: roomOn(arm.id, day, arm.plannedPitches) }));
  const stopped = rooms.flatMap(({ arm, room }) => armResting(arm.id, room)).sort(longestFirst)[0];
  if (stopped !== undefined) return stopped;
  const tightest = rooms
    .flatMap(({ arm, room }) => (room.pitches === null ? [] : [{ arm, atMost: room.pitches }]))
    .map(({ arm, atMost }) => ({ athleteId: arm.id, atMost, spare: atMost - arm.plannedPitches }))
    .sort((a, b) => a.spare - b.spare)[0];
  if (tightest === undefined) return { status: "no_published_limit" };
  const { atMost, athleteId, spare } = tightest;
  return { status: "at_most", atMost, athleteId, holdsPlanned: spare >= 0 };
}

function armResting(athleteId: string, room: ArmRoom): ArmResting[] {
  if (room.status === "no_published_limit") return [];
  if (room.status === "at_most" && room.pitches !== 0) return [];
  const status = room.status === "pain" ? "pain" : "resting";
  return [{ reason: "arm_resting", athleteId, status, firstFreeDay: room.firstFreeDay }];
}

function longestFirst(a: ArmResting, b: ArmResting): number {
  if (a.status !== b.status) return a.status === "pain" ? -1 : 1;
  if (a.firstFreeDay === b.firstFreeDay) return 0;
  if (a.firstFreeDay === null) return -1;
  if (b.firstFreeDay === null) return 1;
  return a.firstFreeDay > b.firstFreeDay ? -1 : 1;
}
