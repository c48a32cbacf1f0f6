import { type SessionKind, throwsOnMound } from "./session-kind";

/** Where a session stands. The one list for the schema, for zod and for the screen. */
export const SESSION_STATES = ["booked", "checked_in", "logged", "cancelled", "no_show"] as const;
export type SessionState = (typeof SESSION_STATES)[number];

/** What can be done to a session. */
export const SESSION_ACTS = ["move", "check_in", "log", "cancel", "mark_no_show"] as const;
export type SessionAct = (typeof SESSION_ACTS)[number];

/** Whether an athlete came to a session that was held. The one list for the schema, for zod and for the screen. */
export const ATTENDANCES = ["came", "no_show"] as const;
export type Attendance = (typeof ATTENDANCES)[number];

/** What a session did for a correction: worked on it, or saw it hold, which confirms it in person. */
export const WORK_OUTCOMES = ["worked_on", "confirmed"] as const;
export type WorkOutcome = (typeof WORK_OUTCOMES)[number];

/** How long before its start a session can be checked in, in minutes (common practice, no source). */
export const CHECK_IN_OPENS_MIN = 60;

/**
 * From state and act to the next state; what is not listed is refused. Logged and cancelled are final: a log is put
 * right by a new entry, a cancelled session by a new booking. A no-show who comes after all is checked in.
 */
const TRANSITIONS: Readonly<Record<SessionState, Partial<Record<SessionAct, SessionState>>>> = {
  booked: {
    move: "booked",
    check_in: "checked_in",
    log: "logged",
    cancel: "cancelled",
    mark_no_show: "no_show",
  },
  checked_in: { log: "logged", cancel: "cancelled" },
  no_show: { check_in: "checked_in" },
  logged: {},
  cancelled: {},
};

/** Of a session, what the question needs. Instants are UTC epoch milliseconds. */
export interface SessionStanding {
  kind: SessionKind;
  state: SessionState;
  startsAtMs: number;
}

/** The words for what an act would have done: "this session is logged, so it cannot be moved". */
const DONE: Readonly<Record<SessionAct, string>> = {
  move: "moved",
  check_in: "checked in",
  log: "logged",
  cancel: "cancelled",
  mark_no_show: "marked as a no-show",
};

/** Why an act is refused. `action` is the act as a past participle, in words. */
export type SessionActRefusal =
  | { reason: "session_state"; state: SessionState; action: string }
  | { reason: "session_not_started"; startsAtMs: number }
  | { reason: "check_in_missing" };

/** The next state, or why there is none. */
export type SessionStep = { ok: true; state: SessionState } | { ok: false; refusal: SessionActRefusal };

/**
 * What the act makes of the session. Nothing is logged and nobody is a no-show before the start; check-in opens
 * {@link CHECK_IN_OPENS_MIN} minutes before it. A session with mound throws is logged only once checked in, because
 * check-in asks what was thrown since and whether anything hurts; dry work may be logged straight away.
 * @example stepSession({ kind: "bullpen", state: "logged", startsAtMs: 0 }, "move", 0)
 * // { ok: false, refusal: { reason: "session_state", state: "logged", action: "moved" } }
 */
export function stepSession(session: SessionStanding, act: SessionAct, nowMs: number): SessionStep {
  const state = TRANSITIONS[session.state][act];
  if (state === undefined) {
    return refused({ reason: "session_state", state: session.state, action: DONE[act] });
  }
  if (nowMs < openFromMs(session, act)) {
    return refused({ reason: "session_not_started", startsAtMs: session.startsAtMs });
  }
  if (act === "log" && session.state === "booked" && throwsOnMound(session.kind)) {
    return refused({ reason: "check_in_missing" });
  }
  return { ok: true, state };
}

/** Whether a session is over and nobody has said what became of it. */
export function isUnlogged(session: { state: SessionState; endsAtMs: number }, nowMs: number): boolean {
  return (session.state === "booked" || session.state === "checked_in") && session.endsAtMs <= nowMs;
}

/** Each state as it is written on a screen. */
export const SESSION_STATE_WORDS: Readonly<Record<SessionState, string>> = {
  booked: "Booked",
  checked_in: "Checked in",
  logged: "Logged",
  cancelled: "Cancelled",
  no_show: "No-show",
};

function openFromMs(session: SessionStanding, act: SessionAct): number {
  if (act === "check_in") return session.startsAtMs - CHECK_IN_OPENS_MIN * 60_000;
  return act === "log" || act === "mark_no_show" ? session.startsAtMs : Number.NEGATIVE_INFINITY;
}

function refused(refusal: SessionActRefusal): SessionStep {
  return { ok: false, refusal };
}
