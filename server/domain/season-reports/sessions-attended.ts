import { SESSION_KIND, SESSION_KINDS, type SessionKind } from "@/server/domain/calendar/session-kind";
import type { Attendance, SessionState } from "@/server/domain/calendar/session-state";

/** One athlete's place on a session that was not cancelled. */
export interface BookedSession {
  kind: SessionKind;
  state: SessionState;
  /** Null until it is logged. */
  attendance: Attendance | null;
}

/** What became of the sessions that were booked and are over. */
export interface SessionsAttended {
  booked: number;
  came: number;
  missed: number;
  /** Over, and nobody wrote down whether the athlete came. */
  notLogged: number;
  /** Those attended by kind, in the order of the kinds; a kind without any is left out. */
  byKind: { kind: SessionKind; came: number }[];
}

/** @param sessions those that have started by now and were not cancelled */
export function sessionsAttended(sessions: readonly BookedSession[]): SessionsAttended {
  const came = sessions.filter(({ attendance }) => attendance === "came");
  const missed = sessions.filter(isMissed).length;
  const byKind = SESSION_KINDS.map((kind) => ({
    kind,
    came: came.filter((each) => each.kind === kind).length,
  }));
  return {
    booked: sessions.length,
    came: came.length,
    missed,
    notLogged: sessions.length - came.length - missed,
    byKind: byKind.filter((each) => each.came > 0),
  };
}

/**
 * Sessions in sentences.
 * @example "24 of 27 booked sessions attended: lesson 14, bullpen 10.", "2 missed.", "1 is not logged yet."
 */
export function sessionsInWords({ booked, came, missed, notLogged, byKind }: SessionsAttended): string[] {
  if (booked === 0) return ["No session was booked in this time."];
  const kinds = byKind.map((each) => `${SESSION_KIND[each.kind].label.toLowerCase()} ${each.came}`);
  const of = `${came} of ${booked} booked ${booked === 1 ? "session" : "sessions"} attended`;
  return [
    `${of}${kinds.length > 0 ? `: ${kinds.join(", ")}` : ""}.`,
    ...(missed > 0 ? [`${missed} missed.`] : []),
    ...(notLogged > 0 ? [`${notLogged} ${notLogged === 1 ? "is" : "are"} not logged yet.`] : []),
  ];
}

const isMissed = ({ state, attendance }: BookedSession) =>
  attendance === "no_show" || (attendance === null && state === "no_show");
