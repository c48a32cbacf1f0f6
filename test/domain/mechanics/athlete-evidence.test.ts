import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type AskedFor,
  type AthleteRecord,
  athleteEvidence,
} from "@/server/domain/mechanics/athlete-evidence";
import { CHANGE_WORDS } from "@/server/domain/mechanics/change";
import type { Observation } from "@/server/domain/mechanics/observation";
import { type DayRepeats, errorsOfSeries } from "@/server/domain/mechanics/series-error";
import { addDays } from "@/server/domain/time/calendar-day";
import { expectFinite } from "../statistics/agree";
import { GIVEN_ON, observation } from "./observations";

/** Ten days of three deliveries that lie 1 apart, of the usual checkpoint: a variance of 1, 20 degrees of freedom. */
const KNEE_DAYS: DayRepeats[] = Array.from({ length: 10 }, (_, day) => ({
  ...{ checkpointId: "front-knee-bent", kind: "front_knee_flexion", view: "open_side" },
  values: [40 + day, 41 + day, 42 + day],
}));

const CORRECTION: AskedFor = {
  ...{ id: "cor", checkpointId: "front-knee-bent", givenOn: GIVEN_ON, seenOn: null },
  wanted: { kind: "less" },
};

function recordOf(of: Partial<AthleteRecord> & { repeats?: DayRepeats[] } = {}): AthleteRecord {
  const { repeats = KNEE_DAYS, ...rest } = of;
  return {
    observations: [],
    corrections: [CORRECTION],
    wantedOf: () => null,
    errorOf: errorsOfSeries(repeats),
    ...rest,
  };
}

/** Weekly looks, as many up to the correction as are named first. */
function looks(before: readonly number[], after: readonly number[], of: Partial<Observation> = {}) {
  return [...before, ...after].map((value, at) =>
    observation({ value, day: addDays(GIVEN_ON, 7 * (at + 1 - before.length)), ...of }),
  );
}

describe("the evidence of an athlete", () => {
  it("tells a knee that bends less since it was asked to, by the checkpoint's own error, of one looked at", () => {
    const { series, many } = athleteEvidence(recordOf({ observations: looks([52, 50, 51], [40, 41, 39]) }));
    expect(many).toMatchObject({ lookedAt: 1, tooFew: 0 });
    expect(series).toHaveLength(1);
    expect(series[0]).toMatchObject({
      error: { of: "checkpoint", figure: { withinSd: 1, degreesOfFreedom: 20 } },
      wanted: { kind: "less" },
      since: [{ correctionId: "cor", among: { since: { words: CHANGE_WORDS.improved, change: 11 } } }],
    });
  });

  it("takes the error of the kind where the checkpoint's own days are too few, and none where there are none", () => {
    const errorOf = errorsOfSeries([
      ...KNEE_DAYS,
      { checkpointId: "other", kind: "front_knee_flexion", view: "open_side", values: [30, 31, 32] },
    ]);
    const of = (checkpointId: string, view: "open_side" | "front") =>
      errorOf({ checkpointId, kind: "front_knee_flexion", view });
    expect(of("other", "open_side")).toMatchObject({ of: "kind", figure: { degreesOfFreedom: 22 } });
    expect(of("front-knee-bent", "open_side")).toMatchObject({ of: "checkpoint" });
    expect(of("front-knee-bent", "front")).toBeNull();
  });

  it("ends the days of a correction where the next begins at the same checkpoint", () => {
    const again: AskedFor = { ...CORRECTION, id: "again", givenOn: addDays(GIVEN_ON, 28) };
    const { series } = athleteEvidence(
      recordOf({
        observations: looks([52, 50, 51], [40, 41, 39, 40, 52, 53, 51]),
        corrections: [CORRECTION, again],
      }),
    );
    const [first, second] = series[0]?.since.map(({ among }) => among.since) ?? [];
    expect(first).toMatchObject({ before: { days: 3 }, after: { days: 4 }, outcome: "improved" });
    expect(second).toMatchObject({ before: { days: 4 }, after: { days: 3 }, outcome: "worse" });
  });

  it("says how many days it takes, of a correction whose checkpoint was hardly looked at", () => {
    const { series, many } = athleteEvidence(recordOf({ observations: looks([52], [40]) }));
    expect(series[0]?.since[0]?.among.since.words).toBe("too few observations (1 of at least 3)");
    expect(series[0]?.trend.words).toBe("too few observations (2 of at least 5)");
    expect(many).toMatchObject({ lookedAt: 0, tooFew: 1 });
  });

  it("holds no series of an athlete of whom nothing is on record", () => {
    expect(athleteEvidence(recordOf())).toMatchObject({ series: [], many: { lookedAt: 0, tooFew: 0 } });
  });

  it("never holds what is no number, whatever is on record", () => {
    const anyLook = fc
      .record({
        checkpointId: fc.constantFrom("front-knee-bent", "other"),
        kind: fc.constantFrom("judgement" as const, "front_knee_flexion" as const),
        value: fc.option(
          fc.oneof(
            fc.constant(40),
            fc.integer({ min: -180_000, max: 180_000 }).map((parts) => parts / 1000),
          ),
        ),
        day: fc.integer({ min: -400, max: 400 }).map((days) => addDays(GIVEN_ON, days)),
        view: fc.constantFrom("open_side" as const, "front" as const, null),
        clipId: fc.option(fc.constantFrom("one", "two", "three")),
      })
      .map((each) => observation(each));
    const anyCorrection = fc.record({
      id: fc.uuid(),
      checkpointId: fc.constantFrom("front-knee-bent", "other", "never looked at"),
      givenOn: fc.integer({ min: -300, max: 300 }).map((days) => addDays(GIVEN_ON, days)),
      seenOn: fc.option(fc.constant(GIVEN_ON)),
      wanted: fc.option(fc.constantFrom({ kind: "more" } as const, { kind: "nearer", to: 40 } as const)),
    });
    const anyRepeats = fc.array(
      fc.record({
        checkpointId: fc.constantFrom("front-knee-bent", "other"),
        kind: fc.constantFrom("judgement" as const, "front_knee_flexion" as const),
        view: fc.constantFrom("open_side" as const, "front" as const, null),
        values: fc.array(
          fc.oneof(
            fc.constant(1),
            fc.integer({ min: -90_000, max: 90_000 }).map((parts) => parts / 1000),
          ),
          {
            minLength: 3,
            maxLength: 4,
          },
        ),
      }),
      { maxLength: 20 },
    );
    fc.assert(
      fc.property(
        fc.array(anyLook, { maxLength: 40 }),
        fc.array(anyCorrection, { maxLength: 5 }),
        anyRepeats,
        (observations, given, repeats) => {
          const corrections = given.toSorted((a, b) => (a.givenOn < b.givenOn ? -1 : 1));
          const evidence = athleteEvidence(recordOf({ observations, corrections, repeats }));
          expectFinite(evidence);
          expect(JSON.stringify(evidence)).not.toMatch(/NaN|Infinity|undefined/);
        },
      ),
      { numRuns: 150 },
    );
  });
});
