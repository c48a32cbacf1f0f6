import { describe, expect, it } from "vitest";
import {
  CHECK_IN_OPENS_MIN,
  SESSION_ACTS,
  SESSION_STATES,
  type SessionAct,
  type SessionState,
  stepSession,
} from "@/server/domain/calendar/session-state";

describe("the states of a session", () => {
  const START = 1_000_000_000;
  const step = (
    state: SessionState,
    act: SessionAct,
    nowMs = START,
    kind: "bullpen" | "dry_work" = "bullpen",
  ) => stepSession({ kind, state, startsAtMs: START }, act, nowMs);

  const allowed: Record<string, SessionState> = {
    "booked move": "booked",
    "booked check_in": "checked_in",
    "booked cancel": "cancelled",
    "booked mark_no_show": "no_show",
    "checked_in log": "logged",
    "checked_in cancel": "cancelled",
    "no_show check_in": "checked_in",
  };
  const pairs = SESSION_STATES.flatMap((state) => SESSION_ACTS.map((act) => [state, act] as const));

  it.each(pairs)("from %s by %s go on or are refused as the table says", (state, act) => {
    const found = step(state, act);
    const expected = allowed[`${state} ${act}`];
    expect(found.ok ? found.state : undefined).toBe(expected);
  });

  it("cannot be moved once logged, and says so in words", () => {
    expect(step("logged", "move")).toEqual({
      ok: false,
      refusal: { reason: "session_state", state: "logged", action: "moved" },
    });
  });

  it.each([
    ["log", "checked_in", START],
    ["mark_no_show", "booked", START],
    ["check_in", "booked", START - CHECK_IN_OPENS_MIN * 60_000],
  ] as const)("let nobody %s a millisecond early", (act, state, fromMs) => {
    expect(step(state, act, fromMs).ok).toBe(true);
    expect(step(state, act, fromMs - 1)).toEqual({
      ok: false,
      refusal: { reason: "session_not_started", startsAtMs: START },
    });
  });

  it("let a session be moved or cancelled long before", () => {
    expect([step("booked", "move", 0).ok, step("booked", "cancel", 0).ok]).toEqual([true, true]);
  });

  it("ask for the check-in before a bullpen is logged, and not before dry work is", () => {
    expect(step("booked", "log")).toEqual({ ok: false, refusal: { reason: "check_in_missing" } });
    expect(step("booked", "log", START, "dry_work")).toEqual({ ok: true, state: "logged" });
  });
});
