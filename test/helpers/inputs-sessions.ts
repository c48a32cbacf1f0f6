import { instantOf } from "@/server/domain/time/calendar-day";
import { WHO, ZONE } from "./academy";
import type { AthleteRecord } from "./athlete-record";
import type { ExampleInput } from "./example-input";
import { ownersOf } from "./owners";

function bookingOf(record: AthleteRecord) {
  const { coach, lane, guardian } = ownersOf(record.athleteId);
  return {
    kind: "bullpen",
    startsAtMs: instantOf("2026-12-08", 1080, ZONE),
    durationMin: 30,
    siteId: WHO.site,
    laneId: lane,
    coachPersonId: coach,
    athletes: [{ athleteId: record.athleteId, plannedPitches: 15 }],
    secondAdult: guardian ? { kind: "guardian", personId: guardian } : null,
  };
}

/** Sessions, the calendar, the arms board and the ledger. */
export const SESSION_INPUTS: Record<string, ExampleInput> = {
  "calendar.day": () => ({ day: null, siteId: null }),
  "calendar.week": () => ({ day: "2026-11-25", siteId: WHO.site }),
  "calendar.whom": () => ({}),
  "arms.board": () => ({ coach: null, team: null, site: null, order: "limit", page: 1 }),
  "arms.cell": (record) => ({ athleteId: record.athleteId, day: "2026-11-28" }),
  "ledger.month": () => ({ month: "2026-11" }),
  "sessions.planning": (record) => ({ athleteIds: [record.athleteId], roundId: record.rounds.settled }),
  "sessions.findTimes": (record) => ({
    athleteIds: [record.athleteId],
    kind: "bullpen",
    durationMin: 30,
    plannedPitches: 15,
    fromDay: "2026-11-26",
    toDay: "2026-12-05",
    coachPersonId: null,
    siteId: null,
    wish: null,
    roundId: null,
    moveSessionId: null,
  }),
  "sessions.book": (record) => ({ ...bookingOf(record), roundId: null, correctionIds: [] }),
  "sessions.move": (record) => ({ ...bookingOf(record), sessionId: record.bookedSession, version: 1 }),
  "sessions.cancel": (record) => ({ sessionId: record.bookedSession, version: 1, reason: "Away that day." }),
  "sessions.giveUpPlace": (record) => ({
    sessionId: record.bookedSession,
    version: 1,
    reason: "Away that day.",
    athleteId: record.athleteId,
  }),
  "sessions.coming": (record) => ({ athleteId: record.athleteId }),
  "sessions.forFamily": (record) => ({ sessionId: record.bookedSession, athleteId: record.athleteId }),
  "sessions.forStaff": (record) => ({ sessionId: record.bookedSession }),
  "sessions.checkIn": (record) => ({
    sessionId: record.runningSession,
    athleteId: record.athleteId,
    throws: [],
    pain: null,
  }),
  "sessions.log": (record) => ({
    sessionId: record.runningSession,
    version: 1,
    lines: [
      {
        athleteId: record.athleteId,
        attendance: "came",
        minutes: 15,
        pitches: 12,
        work: [{ correctionId: record.correction, outcome: "worked_on" }],
        note: "",
      },
    ],
  }),
  "sessions.markNoShow": (record) => ({ sessionId: record.runningSession, version: 1 }),
};
