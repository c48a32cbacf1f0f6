import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DESCRIBES_ONLY, drillHolding } from "@/server/domain/mechanics/drill-holding";
import { grouped } from "@/server/domain/mechanics/grouped";
import { holdingTime } from "@/server/domain/mechanics/holding";
import {
  FEWEST_CORRECTIONS,
  halfInWords,
  holdingByCheckpoint,
  holdingByCoach,
  holdingTimes,
  type WatchedCorrection,
} from "@/server/domain/mechanics/holding-times";
import { type CorrectionEventKind, standingOf } from "@/server/domain/reviews/correction-state";
import { dayOf, instantOf } from "@/server/domain/time/calendar-day";
import { expectFinite } from "../statistics/agree";

const ZONE = "America/New_York";
const dayAt = (ms: number) => dayOf(ms, ZONE);
const historyOf = (...events: [CorrectionEventKind, string][]) =>
  standingOf(
    events.map(([kind, day]) => ({ kind, atMs: instantOf(day, 600, ZONE), reason: "no longer wanted" })),
  ).history;

describe("a holding time", () => {
  it.each([
    [
      "held by two yes in a row",
      [
        ["yes", "2026-11-10"],
        ["yes", "2026-11-20"],
      ],
      19,
      true,
      false,
    ],
    ["open until today", [["partly", "2026-11-10"]], 30, false, false],
    ["retired: watched until then", [["retired", "2026-11-05"]], 4, false, false],
    ["confirmed on the day it was given", [["confirmed", "2026-11-01"]], 0, true, false],
    [
      "come back",
      [
        ["confirmed", "2026-11-20"],
        ["not_yet", "2026-11-25"],
      ],
      19,
      true,
      true,
    ],
    [
      "come back and held again: the first time counts",
      [
        ["confirmed", "2026-11-08"],
        ["not_yet", "2026-11-15"],
        ["confirmed", "2026-11-22"],
      ],
      ...([7, true, true] as const),
    ],
  ] as [string, [CorrectionEventKind, string][], number, boolean, boolean][])(
    "of one that is %s",
    (_, events, days, hasHeld, hasComeBack) => {
      const history = historyOf(["given", "2026-11-01"], ...events);
      expect(holdingTime(history, "2026-12-01", dayAt)).toMatchObject({ days, hasHeld, hasComeBack });
    },
  );

  it("is open while it is worked on and never held: not once retired, nor when it came back", () => {
    const isOpen = (...events: [CorrectionEventKind, string][]) =>
      holdingTime(historyOf(["given", "2026-11-01"], ...events), "2026-12-01", dayAt).isOpen;
    expect(isOpen(["partly", "2026-11-10"])).toBe(true);
    expect(isOpen(["retired", "2026-11-10"])).toBe(false);
    expect(isOpen(["confirmed", "2026-11-10"], ["not_yet", "2026-11-12"])).toBe(false);
  });

  it("of an empty history, or one from after today, is 0 days and not held", () => {
    const none = { days: 0, hasHeld: false, isOpen: true, hasComeBack: false };
    expect(holdingTime([], "2026-12-01", dayAt)).toEqual(none);
    expect(holdingTime(historyOf(["given", "2026-11-01"]), "2026-10-01", dayAt)).toEqual(none);
  });
});

const watched = (of: Partial<WatchedCorrection> = {}): WatchedCorrection => ({
  ...{ checkpointId: "head-steady", coachId: "ada", drill: "Towel drill", hasHeld: true, hasComeBack: false },
  days: 20,
  isOpen: of.hasHeld === false,
  ...of,
});
const heldAfter = (...days: number[]) => days.map((each) => watched({ days: each }));

describe("how long corrections take to hold", () => {
  /* By hand: 5 at risk, 1 holds at 10: 4/5 last; 4 at risk, 2 hold at 20: 4/5 × 2/4 = 0.4, so half hold within 20.
     The interval at 10 begins at 0.8 × exp(-1.96 × √(1/20)) = 0.516, above a half still: 20 or more. */
  it("counts the open ones while they were watched: half within 20 days", () => {
    const times = holdingTimes([...heldAfter(10, 20, 20, 30), watched({ days: 25, hasHeld: false })]);
    expect(times).toMatchObject({ watched: 5, held: 4, open: 1, cameBack: 0, medianDays: 20, lowerDays: 20 });
    expect(times.words).toBe("half held within 20 days (20 or more); 4 of 5 held, none of which came back");
  });

  it("agrees with the published 6-MP arm: half within 23", () => {
    const { examples } = JSON.parse(readFileSync("test/reference/kaplan-meier.json", "utf8"));
    const { time, event, expected } = examples[0];
    const times = holdingTimes(
      time.map((days: number, at: number) => watched({ days, hasHeld: event[at] === 1 })),
    );
    expect(times).toMatchObject({ watched: 21, held: 9, medianDays: expected.median });
    expect(times.words).toMatch(/^half held within 23 days/);
  });

  it("says so while less than half have held, and of fewer than five nothing more than that", () => {
    const open = Array.from({ length: 4 }, () => watched({ hasHeld: false, days: 40 }));
    expect(holdingTimes([...heldAfter(10), ...open]).words).toBe(
      "less than half have held so far; 1 of 5 held, none of which came back",
    );
    expect(holdingTimes(open.concat(open)).words).toBe("less than half have held so far; 0 of 8 held");
    expect(holdingTimes(heldAfter(10, 20, 30, 40)).words).toBe("too few corrections (4 of at least 5)");
    expect(holdingTimes([])).toMatchObject({ watched: 0, medianDays: null });
    expect(FEWEST_CORRECTIONS).toBe(5);
  });

  it("tells 1 day in the singular, an interval that is not reached as or more", () => {
    expect(halfInWords({ medianDays: 1, lowerDays: 0, upperDays: 3 })).toBe(
      "half held within 1 day (0 to 3)",
    );
    expect(halfInWords({ medianDays: 20, lowerDays: 10, upperDays: null })).toBe(
      "half held within 20 days (10 or more)",
    );
  });

  it("is told by checkpoint and by coach, the most watched first, and how many came back", () => {
    const all = [
      ...heldAfter(10),
      ...Array.from({ length: 5 }, (_, at) =>
        watched({ checkpointId: "glove-controlled", coachId: "ben", days: 7, hasComeBack: at === 0 }),
      ),
    ];
    const byCheckpoint = holdingByCheckpoint(all);
    expect(byCheckpoint.map(({ key, cameBack }) => [key, cameBack])).toEqual([
      ["glove-controlled", 1],
      ["head-steady", 0],
    ]);
    expect(byCheckpoint[0]?.words).toBe(
      "half held within 7 days (7 or more); 5 of 5 held, 1 of which came back",
    );
    expect(holdingByCoach(all).map(({ key, watched: count }) => [key, count])).toEqual([
      ["ben", 5],
      ["ada", 1],
    ]);
    expect(holdingByCheckpoint([])).toEqual([]);
  });
});

describe("drills beside holding", () => {
  const five = (of: Partial<WatchedCorrection>) => Array.from({ length: 5 }, () => watched(of));

  it("are compared within one checkpoint, and never called the reason", () => {
    const found = drillHolding([
      ...five({ drill: "Towel drill", days: 10 }),
      ...five({ drill: "  towel  DRILL", days: 12 }),
      ...five({ drill: "Knee throws", days: 30 }),
      ...five({ drill: "Knee throws", checkpointId: "balanced", days: 2 }),
    ]);
    expect(
      found.map(({ drill, isFaster, withIt, withoutIt }) => [
        drill,
        isFaster,
        withIt.watched,
        withoutIt.watched,
      ]),
    ).toEqual([
      ["Towel drill", true, 10, 5],
      ["Knee throws", false, 5, 10],
    ]);
    expect(found[0]?.words).toBe(
      `With it half held within 10 days (10 or more), of 10; without it half held within 30 days (30 or more), of 5. ${DESCRIBES_ONLY}`,
    );
    expect(DESCRIBES_ONLY).toMatch(/does not say that the drill is the reason/);
  });

  it("need five corrections on either side and a drill that is named", () => {
    expect(drillHolding([...five({}), ...five({ drill: "Knee throws" }).slice(1)])).toEqual([]);
    expect(drillHolding([...five({ drill: " " }), ...five({ drill: "" })])).toEqual([]);
    expect(drillHolding([])).toEqual([]);
  });

  it("with which less than half held come last", () => {
    const found = drillHolding([
      ...five({ drill: "Knee throws", hasHeld: false, days: 3 }),
      ...five({ drill: "Towel drill", days: 60 }),
    ]);
    expect(found.map(({ drill, isFaster }) => [drill, isFaster])).toEqual([
      ["Towel drill", true],
      ["Knee throws", false],
    ]);
  });
});

describe("whatever was corrected", () => {
  const drawn = fc.array(
    fc
      .record({
        days: fc.nat(60),
        hasHeld: fc.boolean(),
        checkpointId: fc.constantFrom("a", "b"),
        coachId: fc.constantFrom("x", "y", "z"),
        drill: fc.constantFrom("one", "two", ""),
      })
      .map((each) => watched({ ...each, hasComeBack: each.hasHeld && each.days % 3 === 0 })),
    { maxLength: 40 },
  );

  it("each correction is counted once, and nothing is NaN", () => {
    fc.assert(
      fc.property(drawn, (all) => {
        for (const groups of [holdingByCheckpoint(all), holdingByCoach(all)]) {
          expect(groups.reduce((sum, each) => sum + each.watched, 0)).toBe(all.length);
          expect(groups.reduce((sum, each) => sum + each.held, 0)).toBe(
            all.filter((each) => each.hasHeld).length,
          );
          expectFinite(groups);
          expect(groups.map(({ words }) => words).join(" ")).not.toMatch(/NaN|null|undefined|Infinity/);
        }
        expectFinite(drillHolding(all));
      }),
    );
  });

  it("watching open ones longer never makes half hold sooner", () => {
    fc.assert(
      fc.property(drawn, fc.nat(30), (all, longer) => {
        const later = all.map((each) => (each.hasHeld ? each : { ...each, days: each.days + longer }));
        const [now, then] = [holdingTimes(all).medianDays, holdingTimes(later).medianDays];
        expect(then ?? Number.MAX_VALUE).toBeGreaterThanOrEqual(now ?? Number.MAX_VALUE);
      }),
    );
  });

  it("groups keep the order in which they first come", () => {
    expect(grouped([1, 2, 3], (each) => each % 2 === 0)).toEqual([[1, 3], [2]]);
  });
});
