import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bestDay } from "@/server/domain/throwing/best-day";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { plan } from "@/server/domain/throwing/plan-sessions";
import { addDays } from "@/server/domain/time/calendar-day";
import { ask, plan as planned, type Throws } from "./arm-question";
import { anyArm } from "./random-arms";
import { brokenByHand } from "./walked-by-every-rule";

const OUTING: Throws[] = [["2026-12-01", 60]];

describe("the best day of a window", () => {
  const window = { from: "2026-11-26", to: "2026-11-30" };

  it("is the one the book leaves most on, then the furthest from other pitching, then the earliest", () => {
    expect(bestDay(ask("2026-11-26", { planned: OUTING }), 30, window)).toEqual({
      day: "2026-11-26",
      pitches: 85,
    });
    const thrown: Throws[] = [["2026-11-24", 20]];
    const two = { from: "2026-11-25", to: "2026-11-29" };
    expect(bestDay(ask("2026-11-25", { thrown }), 30, two)).toEqual({ day: "2026-11-29", pitches: 85 });
    expect(bestDay(ask("2026-11-25"), 30, window)).toEqual({ day: "2026-11-26", pitches: 85 });
  });

  it("is none without room, under pain, without a number, and in an empty window", () => {
    expect(bestDay(ask("2026-11-26"), 86, window)).toBeNull();
    expect(bestDay(ask("2026-11-26", { bornOn: "1990-01-01" }), 10, window)).toBeNull();
    const pain = {
      kind: "pain" as const,
      firstFeltOn: "2026-11-20",
      lastFeltOn: "2026-11-20",
      reportIds: ["p"],
    };
    expect(bestDay(ask("2026-11-26", { pain }), 1, window)).toBeNull();
    expect(bestDay(ask("2026-11-26"), 1, { from: "2026-11-30", to: "2026-11-29" })).toBeNull();
  });

  it("has the room it says, and no day of the window has more", () => {
    fc.assert(
      fc.property(anyArm, fc.integer({ min: 1, max: 40 }), (question, pitches) => {
        const days = Array.from({ length: 10 }, (_, ahead) => addDays(question.day, ahead));
        const rooms = days.map((day) => pitchesAllowed({ ...question, day }).pitches);
        const best = bestDay(question, pitches, { from: question.day, to: addDays(question.day, 9) });
        const fitting = rooms.filter((room): room is number => room !== null && room >= pitches);
        expect(best?.pitches ?? null).toBe(fitting.length === 0 ? null : Math.max(...fitting));
        if (best) expect(rooms[days.indexOf(best.day)]).toBe(best.pitches);
      }),
      { numRuns: 200 },
    );
  });
});

describe("sessions planned before an outing", () => {
  it("take as many as the book leaves, the latest first", () => {
    // Monday has 20 beside Tuesday's 60; Sunday would make three days in a row; Saturday needs none of Sunday's rest.
    expect(
      plan(ask("2026-11-25", { planned: OUTING }), { sessions: 2, before: "2026-12-01", from: "2026-11-25" }),
    ).toEqual([
      { day: "2026-11-30", pitches: 20 },
      { day: "2026-11-28", pitches: 35 },
    ]);
  });

  it("are fewer when the days run out, and none under pain or without a number", () => {
    const wish = { sessions: 5, before: "2026-12-01", from: "2026-11-30" };
    expect(plan(ask("2026-11-25", { planned: OUTING }), wish)).toHaveLength(1);
    expect(plan(ask("2026-11-25", { planned: OUTING, bornOn: "1990-01-01" }), wish)).toEqual([]);
    const pain = {
      kind: "pain" as const,
      firstFeltOn: "2026-11-20",
      lastFeltOn: "2026-11-20",
      reportIds: ["p"],
    };
    expect(plan(ask("2026-11-25", { planned: OUTING, pain }), wish)).toEqual([]);
  });

  it("leave room for those already found when a book begins on the way", () => {
    const [book] = ask("2026-11-03").books;
    if (!book) throw new Error("There is no book.");
    const inForce = { level: "limit" as const, source: "drawn", effectiveUntil: null };
    const own = {
      ...{ ...book, id: "own", ageBasis: { kind: "on_day" as const } },
      rules: [
        { ...inForce, kind: "days_in_a_row" as const, maxDays: 1, effectiveFrom: "2000-01-01" },
        {
          ...{ ...inForce, kind: "pitch_count" as const, effectiveFrom: "2026-11-03" },
          ageBands: [{ ageMin: 6, ageMax: 20, dailyMaxPitches: 5, restBands: [] }],
          ...{ restCountsFrom: "total" as const, finishesBatter: false, intentionalWalkPitches: 0 },
        },
      ],
    };
    const arm = ask("2026-11-01", { books: [book, own] });
    const wish = { sessions: 2, before: "2026-11-04", from: "2026-11-02" };
    expect(plan(arm, wish)).toEqual([{ day: "2026-11-03", pitches: 5 }]);
  });

  it("break no rule of any book when the days are walked afterwards, one after another", () => {
    let walked = 0;
    fc.assert(
      fc.property(anyArm, fc.integer({ min: 1, max: 4 }), (question, sessions) => {
        const before = addDays(question.day, 12);
        const outing = planned([before, 1]);
        const whole = { ...question, planned: [...question.planned, outing] };
        const found = plan(whole, { sessions, before, from: question.day });
        expect(found.length).toBeLessThanOrEqual(sessions);
        found.forEach(({ day, pitches }, index) => {
          const others = found.filter((_, other) => other !== index);
          // The innings that a plan begins are not known: as a row of the log each would have begun one.
          const beside = others.map((each) => planned([each.day, each.pitches, "live_at_bats"]));
          const asked = { ...whole, kind: null, day, planned: [...whole.planned, ...beside] };
          for (const book of question.books)
            expect(brokenByHand(asked, book, { pitches, outs: 0 })).not.toBe(true);
          walked += 1;
        });
      }),
      { numRuns: 400 },
    );
    expect(walked).toBeGreaterThan(200);
  });
});
