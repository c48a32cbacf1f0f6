import { describe, expect, it } from "vitest";
import { athleteEvidence } from "@/server/domain/mechanics/athlete-evidence";
import { CHANGE_WORDS } from "@/server/domain/mechanics/change";
import { errorsOfSeries } from "@/server/domain/mechanics/series-error";
import { seasonChanges } from "@/server/domain/season-reports/season-changes";
import { addDays } from "@/server/domain/time/calendar-day";
import { GIVEN_ON, observation } from "../mechanics/observations";

const KNEE = { id: "knee", checkpointId: "front-knee-bent", checkpointName: "Front knee firm" };
const TRUNK = { id: "trunk", checkpointId: "trunk-upright", checkpointName: "Trunk upright" };
const GIVEN = { givenOn: GIVEN_ON, seenOn: null, wanted: { kind: "less" } } as const;

/** Repeats that lie 1 apart, enough of them. */
const repeats = Array.from({ length: 10 }, () => ({
  ...({ checkpointId: "front-knee-bent", kind: "front_knee_flexion", view: "open_side" } as const),
  values: [40, 41, 42],
}));

function changes(
  looks: [checkpointId: string, before: number[], after: number[]][],
  asked = ["knee", "trunk"],
) {
  const corrections = [KNEE, TRUNK].map((each) => ({ ...each, ...GIVEN }));
  const evidence = athleteEvidence({
    observations: looks.flatMap(([checkpointId, before, after]) =>
      [...before, ...after].map((value, at) =>
        observation({ checkpointId, value, day: addDays(GIVEN_ON, 7 * (at + 1 - before.length)) }),
      ),
    ),
    corrections,
    wantedOf: () => null,
    errorOf: errorsOfSeries(repeats),
    isAskedFor: (id) => asked.includes(id),
  });
  return seasonChanges(evidence, corrections);
}

const BETTER: [string, number[], number[]] = ["front-knee-bent", [52, 50, 51], [40, 41, 39]];
const STILL: [string, number[], number[]] = ["trunk-upright", [40, 41, 39], [40, 39, 41]];

describe("what changed in a season", () => {
  it("is told in the fixed words with its figures, of how many that were looked at, beside what did not change", () => {
    const told = changes([BETTER, STILL]);
    expect(told).toMatchObject({ lookedAt: 2, tooFew: 0 });
    expect(told.words).toEqual([
      "2 checkpoints were looked at together; 1 changed beyond measurement error.",
    ]);
    expect(told.told).toHaveLength(1);
    expect(told.told[0]).toMatchObject({
      checkpointName: "Front knee firm",
      seen: "Front-knee flexion from the open side, since Mon 1 Jun 2026",
    });
    expect(told.told[0]?.words[0]?.toLowerCase()).toBe(`${CHANGE_WORDS.improved}.`);
    expect(told.same).toMatchObject([{ checkpointName: "Trunk upright" }]);
    expect(told.same[0]?.words[0]?.toLowerCase()).toBe(`${CHANGE_WORDS.no_change}.`);
  });

  it("leaves out corrections of other seasons, which are then not looked at either", () => {
    const told = changes([BETTER, STILL], ["trunk"]);
    expect(told).toMatchObject({ lookedAt: 1, told: [], same: [{ checkpointName: "Trunk upright" }] });
  });

  it("says so where nothing was looked at, or not often enough", () => {
    expect(changes([])).toMatchObject({ lookedAt: 0, told: [], same: [] });
    expect(changes([]).words).toEqual(["Nothing was looked at often enough to compare."]);
    expect(changes([["front-knee-bent", [52], [40]]]).words).toEqual([
      "No change can be told yet. The one that was looked at has too few observations before or since the correction.",
    ]);
  });
});
