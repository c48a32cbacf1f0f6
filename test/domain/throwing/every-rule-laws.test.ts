import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { armStrip } from "@/server/domain/throwing/arm-strip";
import {
  type ArmQuestion,
  type PitchesAllowed,
  pitchesAllowed,
} from "@/server/domain/throwing/pitches-allowed";
import { addDays } from "@/server/domain/time/calendar-day";
import { entry, plan } from "./arm-question";
import { anyArm } from "./random-arms";
import { brokenByHand } from "./walked-by-every-rule";

/** Whether any book would be broken; null where none says anything. */
function broken(question: ArmQuestion, more: { pitches: number; outs: number }): boolean | null {
  const said = question.books.map((book) => brokenByHand(question, book, more));
  return said.every((each) => each === null) ? null : said.includes(true);
}

function kindOf({ status, pitches }: PitchesAllowed) {
  if (status === "no_published_limit") return "silent";
  if (status === "resting") return "resting";
  if (pitches === null) return "by_innings";
  return pitches === 0 ? "used_up" : "free";
}

/** The number breaks nothing and one more does; without a number nothing does. */
function expectMost(
  question: ArmQuestion,
  most: number | null,
  suppose: (most: number) => { pitches: number; outs: number },
) {
  if (most === null) expect(broken(question, suppose(400))).toBe(false);
  else expect(broken(question, suppose(most + 1))).toBe(true);
  if (most) expect(broken(question, suppose(most))).toBe(false);
}

function expectFirstFree(question: ArmQuestion, firstFreeDay: string | null) {
  const one = { pitches: 1, outs: 1 };
  for (let day = question.day; day < (firstFreeDay ?? question.day); day = addDays(day, 1)) {
    expect(broken({ ...question, day }, one)).toBe(true);
  }
  if (firstFreeDay) expect(broken({ ...question, day: firstFreeDay }, one)).toBe(false);
}

describe("every kind of rule", () => {
  it("agrees on 10,000 random histories with all rules walked by hand", { timeout: 120_000 }, () => {
    const met = { free: 0, resting: 0, used_up: 0, by_innings: 0, silent: 0 };
    fc.assert(
      fc.property(anyArm, (question) => {
        const answer = pitchesAllowed(question);
        const isBroken = broken(question, { pitches: 1, outs: 1 });
        met[kindOf(answer)] += 1;
        expect(answer.status === "no_published_limit").toBe(isBroken === null);
        if (isBroken === null) return;
        expect(answer.pitches === 0).toBe(isBroken);
        expectMost(question, answer.pitches, (pitches) => ({ pitches, outs: 1 }));
        if (answer.pitches === 0) expectFirstFree(question, answer.firstFreeDay);
        else expectMost(question, answer.outs, (outs) => ({ pitches: 1, outs }));
      }),
      { numRuns: 10_000, seed: 31_415 },
    );
    // The histories are worth walking only when each kind of answer came up often.
    expect(Math.min(...Object.values(met))).toBeGreaterThan(150);
  });

  it("never allows more when a throw is added, whatever the rules", () => {
    const added = fc.record({
      offset: fc.integer({ min: -9, max: 9 }),
      pitches: fc.integer({ min: 0, max: 110 }),
      outs: fc.option(fc.integer({ min: 0, max: 12 })),
      inningsCaught: fc.option(fc.integer({ min: 0, max: 6 })),
      isPlan: fc.boolean(),
    });
    fc.assert(
      fc.property(anyArm, added, (question, { offset, pitches, isPlan, ...said }) => {
        const day = addDays(question.day, offset);
        const more = isPlan
          ? { ...question, planned: [...question.planned, { ...plan([day, pitches]), id: "added" }] }
          : { ...question, entries: [...question.entries, entry([day, pitches], { ...said, id: "added" })] };
        const [before, after] = [pitchesAllowed(question), pitchesAllowed(more)];
        expect(after.pitches ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(
          before.pitches ?? Number.POSITIVE_INFINITY,
        );
        expect(after.outs ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(
          before.outs ?? Number.POSITIVE_INFINITY,
        );
      }),
      { numRuns: 2000 },
    );
  });

  it("shows on a strip what each day's answer says", () => {
    fc.assert(
      fc.property(anyArm, (question) => {
        const from = addDays(question.day, -14);
        const strip = armStrip(question, { from, to: addDays(question.day, 14) });
        expect(strip).toHaveLength(29);
        strip.forEach((cell, index) => {
          const { status, pitches, outs, reasons } = pitchesAllowed({
            ...question,
            day: addDays(from, index),
          });
          const isOverridden = reasons.some((reason) => reason.kind === "override");
          expect(cell).toEqual({ status, pitches, outs, isOverridden });
        });
      }),
      { numRuns: 300 },
    );
  });

  it("has no day on a strip that ends before it begins", () => {
    fc.assert(
      fc.property(anyArm, (question) => {
        expect(armStrip(question, { from: question.day, to: addDays(question.day, -1) })).toEqual([]);
      }),
      { numRuns: 5 },
    );
  });

  it("says why whatever it says, first a reason of the number", () => {
    fc.assert(
      fc.property(anyArm, (question) => {
        const { status, reasons, boundBy } = pitchesAllowed(question);
        expect(reasons.length).toBeGreaterThan(0);
        expect(boundBy === null).toBe(status === "no_published_limit");
        const rests = ["rest_owed", "innings_rest", "days_in_a_row", "caught"];
        expect(rests.includes(reasons[0]?.kind ?? "")).toBe(status === "resting");
      }),
      { numRuns: 1000 },
    );
  });
});
