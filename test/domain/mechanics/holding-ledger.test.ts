import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heldSteps, holdingLedger, type LedgerCorrection } from "@/server/domain/mechanics/holding-ledger";
import { agree, expectFinite } from "../statistics/agree";

const EVERYTHING = { phase: null, checkpointId: null, coachId: null };

const given = (of: Partial<LedgerCorrection> = {}): LedgerCorrection => ({
  ...{ checkpointId: "head-steady", coachId: "ada", drill: "Towel drill", phase: "stride" as const },
  ...{ days: 20, hasHeld: true, isOpen: of.hasHeld === false, hasComeBack: false },
  ...of,
});

describe("the curve of holding", () => {
  it("is one less the published curve of the 6-MP arm, with its interval the other way round", () => {
    const { examples } = JSON.parse(readFileSync("test/reference/kaplan-meier.json", "utf8"));
    const { time, event } = examples[0];
    const steps = heldSteps(
      time.map((days: number, at: number) => given({ days, hasHeld: event[at] === 1 })),
    );
    /* Freireich et al. 1963, Blood 21:699-716, as in R's survfit: .857 .807 .753 .690 .627 .538 .448 last. */
    expect(steps.map(({ days, share }) => [days, Number(share.toFixed(3))])).toEqual([
      ...[[6, 0.143] as const, [7, 0.193] as const, [10, 0.247] as const, [13, 0.31] as const],
      ...[[16, 0.373] as const, [22, 0.462] as const, [23, 0.552] as const],
    ]);
    expect(steps[0]).toMatchObject({ atRisk: 21, heldThen: 3, lower: 0 });
    agree(steps[0]?.upper, 1 - 0.7198171024801, "upper of the first step", 1e-6);
  });

  it("is not drawn of fewer than five", () => {
    expect(heldSteps(Array.from({ length: 4 }, () => given()))).toEqual([]);
    expect(heldSteps(Array.from({ length: 5 }, () => given()))).toEqual([
      { days: 20, atRisk: 5, heldThen: 5, share: 1, lower: null, upper: null },
    ]);
  });
});

describe("the ledger of corrections", () => {
  const all = [
    ...[5, 10, 20, 40].map((days) => given({ days })),
    given({ days: 90, hasHeld: false }),
    ...[3, 6].map((days) => given({ days, coachId: "ben", checkpointId: "balanced", phase: "wind_up" })),
  ];

  it("tells of what is chosen, by phase, checkpoint and coach together", () => {
    const watched = (choice: Partial<typeof EVERYTHING> | object) =>
      holdingLedger(all, { ...EVERYTHING, ...choice }).all.watched;
    expect(watched({})).toBe(7);
    expect(watched({ phase: "wind_up" })).toBe(2);
    expect(watched({ coachId: "ada" })).toBe(5);
    expect(watched({ coachId: "ada", checkpointId: "balanced" })).toBe(0);
  });

  it("reads its curve out as far as any was watched", () => {
    const { readings, longestDays } = holdingLedger(all, { ...EVERYTHING, coachId: "ada" });
    expect(longestDays).toBe(90);
    expect(readings.map(({ days, share }) => [days, Number(share.toFixed(6))])).toEqual([
      [14, 0.4],
      [30, 0.6],
      [60, 0.8],
      [90, 0.8],
    ]);
  });

  it("of none, of one, and of open ones alone says so in words", () => {
    expect(holdingLedger([], EVERYTHING)).toMatchObject({
      all: { watched: 0, words: "too few corrections (0 of at least 5)" },
      ...{ steps: [], readings: [], longestDays: 0, byCheckpoint: [], byCoach: [], drills: [] },
    });
    expect(holdingLedger([given()], EVERYTHING).all.words).toBe("too few corrections (1 of at least 5)");
    const open = Array.from({ length: 6 }, () => given({ hasHeld: false, days: 40 }));
    expect(holdingLedger(open, EVERYTHING)).toMatchObject({
      all: {
        watched: 6,
        open: 6,
        held: 0,
        medianDays: null,
        words: expect.stringContaining("less than half"),
      },
      ...{ steps: [], readings: [], longestDays: 40 },
    });
  });
});

describe("whatever was corrected", () => {
  const drawn = fc.array(
    fc
      .record({
        days: fc.nat(400),
        hasHeld: fc.boolean(),
        isRetired: fc.boolean(),
        checkpointId: fc.constantFrom("a", "b"),
        coachId: fc.constantFrom("x", "y", "z"),
        drill: fc.constantFrom("one", "two", ""),
        phase: fc.constantFrom("stride" as const, "wind_up" as const),
      })
      .map(({ isRetired, ...each }) =>
        given({
          ...each,
          isOpen: !each.hasHeld && !isRetired,
          hasComeBack: each.hasHeld && each.days % 3 === 0,
        }),
      ),
    { maxLength: 60 },
  );
  const choices = fc.record({
    phase: fc.constantFrom(null, "stride" as const, "follow_through" as const),
    checkpointId: fc.constantFrom(null, "a", "none"),
    coachId: fc.constantFrom(null, "x", "none"),
  });

  it("nothing is NaN, and each is counted once", () => {
    fc.assert(
      fc.property(drawn, choices, (corrections, choice) => {
        const ledger = holdingLedger(corrections, choice);
        expectFinite(ledger);
        expect(JSON.stringify(ledger)).not.toMatch(/NaN|undefined|Infinity/);
        for (const groups of [ledger.byCheckpoint, ledger.byCoach]) {
          for (const count of ["watched", "held", "open", "cameBack"] as const) {
            expect(groups.reduce((sum, each) => sum + each[count], 0)).toBe(ledger.all[count]);
          }
        }
      }),
    );
  });

  it("shares rise from 0 to 1 within their interval", () => {
    fc.assert(
      fc.property(drawn, (corrections) => {
        const steps = heldSteps(corrections);
        const shares = [0, ...steps.map(({ share }) => share)];
        expect(shares).toEqual([...new Set(shares)].sort((one, other) => one - other));
        for (const { share, lower, upper } of steps) {
          const between = [0, lower ?? 0, share, upper ?? 1, 1];
          between.forEach((each, at) => {
            expect(each).toBeGreaterThanOrEqual((between[at - 1] ?? 0) - 1e-12);
          });
        }
      }),
    );
  });
});
