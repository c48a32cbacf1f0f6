import type { AcademyRows } from "@/server/data/academy-rows";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import {
  CAUTIOUS_READING,
  countsTowardLimit,
  type PlannedThrows,
  type ThrowEntry,
} from "@/server/domain/throwing/throw-entry";
import { NO_GAME } from "@/server/domain/throwing/validate-game";
import { dayOf } from "@/server/domain/time/calendar-day";

/** Throws that the book has no room for. */
export interface RuleFault {
  athleteId: string;
  day: string;
  what: string;
}

const ZONE = "America/New_York";

/** Takes each row of each arm out in turn and asks the book, with all the others in place, whether it had room for it. */
export function ruleFaults(rows: AcademyRows, today: string): RuleFault[] {
  return rows.athlete.flatMap(({ id: athleteId, bornOn }) => {
    const entries: ThrowEntry[] = rows.throwEntry
      .filter((row) => row.athleteId === athleteId)
      .map(({ id, thrownOn, kind, pitches, replacesId = null, reportedAtMs }) => ({
        ...{ ...NO_GAME, id, athleteId, thrownOn, kind, pitches, replacesId, reportedAtMs },
      }));
    const planned = [...bookedThrows(rows, athleteId), ...outings(rows, athleteId)];
    const roomWithout = (day: string, id: string) =>
      pitchesAllowed({
        ...{
          day,
          bornOn,
          today,
          books: [USA_BASEBALL_2018],
          overrides: [],
          reading: CAUTIOUS_READING,
          pain: null,
        },
        lastReportedOn: today,
        entries: entries.filter((entry) => entry.id !== id && isNear(entry.thrownOn, day)),
        planned: planned.filter((plan) => plan.id !== id && isNear(plan.plannedOn, day)),
      }).pitches ?? 0;
    const thrown = entries
      .filter(({ kind }) => countsTowardLimit(kind, CAUTIOUS_READING))
      .filter(({ id, thrownOn, pitches }) => roomWithout(thrownOn, id) < pitches && !isKnownLate(rows, id))
      .map(({ thrownOn, kind }) => ({ athleteId, day: thrownOn, what: `${kind} thrown` }));
    const booked = planned
      .filter(({ id, plannedOn, pitches }) => roomWithout(plannedOn, id) < pitches)
      .map(({ plannedOn, kind }) => ({ athleteId, day: plannedOn, what: `${kind} booked` }));
    return [...thrown, ...booked];
  });
}

/** The game logged after the bullpen was booked: it is the bullpen that has no room, not the game. */
function isKnownLate(rows: AcademyRows, id: string): boolean {
  const late = rows.throwEntry.find((row) => row.id === id);
  return rows.notice.some(({ kind, aboutAthleteId, createdAtMs }) => {
    const follows = createdAtMs === late?.reportedAtMs;
    return kind === "session_without_room" && aboutAthleteId === late?.athleteId && follows;
  });
}

function bookedThrows(rows: AcademyRows, athleteId: string): PlannedThrows[] {
  return rows.session
    .filter(({ state }) => state === "booked" || state === "checked_in")
    .flatMap(({ id, kind, startsAtMs }) =>
      rows.sessionAthlete
        .filter((row) => row.sessionId === id && row.athleteId === athleteId && row.plannedPitches > 0)
        .map(({ plannedPitches: pitches }) => ({
          ...{ id, plannedOn: dayOf(startsAtMs, ZONE), pitches, teamId: null },
          kind: kind === "bullpen" ? ("bullpen" as const) : ("lesson" as const),
        })),
    );
}

function outings(rows: AcademyRows, athleteId: string): PlannedThrows[] {
  return rows.plannedOuting
    .filter((row) => row.athleteId === athleteId)
    .map(({ id, plannedOn, pitches }) => ({ id, plannedOn, pitches, kind: "game", teamId: null }));
}

/* Eleven days either way: more than any rest and any row of days reach, and quicker than the whole season. */
const NEAR_MS = 11 * 86_400_000;
const isNear = (day: string, other: string) => Math.abs(Date.parse(day) - Date.parse(other)) <= NEAR_MS;
