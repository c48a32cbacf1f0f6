import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  CORRECTION_EVENT_KINDS,
  CORRECTION_STATES,
  type CorrectionEvent,
  type CorrectionEventKind,
  type CorrectionStanding,
  givenAt,
  isOpen,
  MAX_OPEN_CORRECTIONS,
  mayAddCorrection,
  moveCorrection,
  standingOf,
} from "@/server/domain/reviews/correction-state";

const following = (...kinds: CorrectionEventKind[]): CorrectionStanding =>
  standingOf(
    ["given" as const, ...kinds].map((kind, index) => ({
      kind,
      atMs: index * 1000,
      reason: "not wanted any more",
    })),
  );
const move = (standing: CorrectionStanding, kind: CorrectionEventKind, reason = "said why") =>
  moveCorrection(standing, { kind, atMs: 99_000, reason });

describe("a correction", () => {
  const cases: [CorrectionEventKind[], string, boolean][] = [
    [[], "given", false],
    [["not_yet"], "given", false],
    [["partly"], "showing", false],
    [["yes"], "showing", false],
    [["yes", "yes"], "held", false],
    [["partly", "yes"], "showing", false],
    [["partly", "yes", "yes"], "held", false],
    [["yes", "partly", "yes"], "showing", false],
    [["yes", "not_yet", "yes"], "showing", false],
    [["yes", "not_yet"], "given", false],
    [["partly", "not_yet"], "given", false],
    [["confirmed"], "held", false],
    [["confirmed", "yes"], "held", false],
    [["yes", "yes", "yes"], "held", false],
    [["yes", "yes", "not_yet"], "given", true],
    [["confirmed", "not_yet"], "given", true],
    [["confirmed", "partly"], "showing", false],
    [["confirmed", "not_yet", "yes"], "showing", true],
    [["confirmed", "not_yet", "not_yet"], "given", true],
    [["confirmed", "not_yet", "yes", "yes"], "held", false],
    [["yes", "yes", "not_yet", "yes"], "showing", true],
    [["retired"], "retired", false],
    [["yes", "retired"], "retired", false],
    [["confirmed", "not_yet", "retired"], "retired", true],
  ];

  it.each(cases)("after %j is %s (come back: %s)", (kinds, state, cameBack) => {
    expect(following(...kinds)).toMatchObject({ state, cameBack });
  });

  it("keeps the day it entered each state and adds nothing when a verdict changes nothing", () => {
    expect(following("not_yet", "yes", "partly", "confirmed", "not_yet").history).toEqual([
      { state: "given", fromMs: 0 },
      { state: "showing", fromMs: 2000 },
      { state: "held", fromMs: 4000 },
      { state: "given", fromMs: 5000 },
    ]);
  });

  it("is retired only with a reason, only while open, and for good", () => {
    expect(move(givenAt(0), "retired", "  ")).toEqual({ ok: false, refusal: "reason_missing" });
    expect(move(following("confirmed"), "retired")).toEqual({ ok: false, refusal: "held_already" });
    for (const kind of CORRECTION_EVENT_KINDS.filter((one) => one !== "given")) {
      expect(move(following("retired"), kind)).toEqual({ ok: false, refusal: "already_retired" });
    }
    expect(move(givenAt(0), "given")).toEqual({ ok: false, refusal: "given_already" });
  });

  it("whose record cannot have happened is broken, not refused", () => {
    const event = (kind: CorrectionEventKind): CorrectionEvent => ({ kind, atMs: 0, reason: "why" });
    expect(() => standingOf([])).toThrow("given");
    expect(() => standingOf([event("yes")])).toThrow("given");
    expect(() => standingOf([event("given"), event("retired"), event("yes")])).toThrow("already_retired");
  });

  it("is open while given or showing", () => {
    expect(CORRECTION_STATES.filter(isOpen)).toEqual(["given", "showing"]);
  });
});

const verdicts = fc.array(fc.constantFrom("not_yet", "partly", "yes", "confirmed"), { maxLength: 20 });

describe("any run of verdicts", () => {
  it("ends held exactly when the last word was confirmed, the second yes in a row, or a yes on one that held", () => {
    fc.assert(
      fc.property(verdicts, (kinds) => {
        const lastSetback = Math.max(kinds.lastIndexOf("not_yet"), kinds.lastIndexOf("partly"));
        const since = kinds.slice(lastSetback + 1);
        const held = since.includes("confirmed") || since.length >= 2;
        expect(following(...kinds).state === "held").toBe(held);
      }),
    );
  });

  it("is given after not yet and showing after partly, whatever came before", () => {
    fc.assert(
      fc.property(verdicts, (kinds) => {
        expect(following(...kinds, "not_yet").state).toBe("given");
        expect(following(...kinds, "partly").state).toBe("showing");
      }),
    );
  });

  it("is marked as come back from a not yet on a held one until it holds again", () => {
    fc.assert(
      fc.property(verdicts, (kinds) => {
        const marked = kinds.reduce<boolean>((before, kind, index) => {
          if (following(...kinds.slice(0, index + 1)).state === "held") return false;
          return before || (kind === "not_yet" && following(...kinds.slice(0, index)).state === "held");
        }, false);
        expect(following(...kinds).cameBack).toBe(marked);
      }),
    );
  });

  it("has a history that changes state at each step, never goes back in time, and ends where it stands", () => {
    fc.assert(
      fc.property(verdicts, (kinds) => {
        const { history, state } = following(...kinds);
        expect(history.at(-1)?.state).toBe(state);
        for (const [index, step] of history.slice(1).entries()) {
          expect(step.state).not.toBe(history[index]?.state);
          expect(step.fromMs).toBeGreaterThan(history[index]?.fromMs ?? Number.POSITIVE_INFINITY);
        }
      }),
    );
  });

  it("leaves the standing it started from as it was", () => {
    const before = Object.freeze({ ...givenAt(0), history: Object.freeze(givenAt(0).history) });
    expect(move(before, "yes").ok).toBe(true);
    expect(before).toEqual(givenAt(0));
  });
});

describe("the number of open corrections", () => {
  it.each([
    [0, MAX_OPEN_CORRECTIONS, true],
    [4, MAX_OPEN_CORRECTIONS, true],
    [5, MAX_OPEN_CORRECTIONS, false],
    [6, MAX_OPEN_CORRECTIONS, false],
    [2, 3, true],
    [3, 3, false],
  ])("with %i open and %i the most, one more: %s", (openCount, max, may) => {
    expect(mayAddCorrection(openCount, max)).toBe(may);
  });

  it("is five at a time when nothing else is set", () => {
    expect(mayAddCorrection(4)).toBe(true);
    expect(mayAddCorrection(5)).toBe(false);
  });
});
