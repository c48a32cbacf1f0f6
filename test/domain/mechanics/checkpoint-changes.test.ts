import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { athleteEvidence } from "@/server/domain/mechanics/athlete-evidence";
import { CHANGE_WORDS } from "@/server/domain/mechanics/change";
import { checkpointChanges } from "@/server/domain/mechanics/checkpoint-changes";
import type { Observation } from "@/server/domain/mechanics/observation";
import type { SeriesError } from "@/server/domain/mechanics/series-error";
import { addDays } from "@/server/domain/time/calendar-day";

const FIGURE = { withinSd: 0.3, plusMinus: 0.588, degreesOfFreedom: 20, isEnough: true };
const ERROR = { figure: FIGURE } as SeriesError;

const seen = (checkpointId: string, at: number, value: number | null): Observation => ({
  ...{ id: `${checkpointId} ${at} ${value}`, checkpointId, kind: "judgement", value },
  ...{ day: addDays("2026-01-01", at), clipId: `clip ${at}`, frame: 10, view: "open_side" },
  ...{ coachId: "coach", pitchType: null, repeatOfId: null },
});

const series = (checkpointId: string, values: readonly (number | null)[]) =>
  values.map((value, at) => seen(checkpointId, at * 7, value));

const changesOf = (observations: readonly Observation[], error: SeriesError | null = ERROR) =>
  checkpointChanges(
    athleteEvidence({
      observations,
      corrections: [...new Set(observations.map((each) => each.checkpointId))].map((checkpointId) => ({
        ...{ id: `of ${checkpointId}`, checkpointId, givenOn: "2026-01-24", seenOn: null, wanted: null },
      })),
      wantedOf: () => null,
      errorOf: () => error,
    }),
  );

describe("the changes of an athlete's checkpoints", () => {
  it("stand worse first, then improved, no change, too few, each in its fixed words", () => {
    const changes = changesOf([
      ...series("same", [1, 1, 1, 1, 1, 1, 1, 1]),
      ...series("few", [1]),
      ...series("better", [0, 0, 0, 0, 3, 3, 3, 3]),
      ...series("worse", [3, 3, 3, 3, 0, 0, 0, 0]),
    ]);
    expect(changes.map(({ correctionId, words }) => [correctionId, words])).toEqual([
      ["of worse", CHANGE_WORDS.worse],
      ["of better", CHANGE_WORDS.improved],
      ["of same", CHANGE_WORDS.no_change],
      ["of few", "too few observations (1 of at least 3)"],
    ]);
  });

  it("are none of an empty record, and too few where the error is not known", () => {
    expect(changesOf([])).toEqual([]);
    const [only] = changesOf(series("unknown", [0, 0, 0, 0, 3, 3, 3, 3]), null);
    expect(only).toMatchObject({ outcome: "too_few", words: "too few observations (0 of at least 15)" });
  });

  it("have the right words and no NaN whatever was recorded: nothing, one point, all equal, unseen, contradictory", () => {
    const value = fc.option(fc.integer({ min: 0, max: 3 }), { nil: null });
    const recorded = fc
      .tuple(fc.constantFrom("a", "b", "c"), fc.integer({ min: 0, max: 60 }), value)
      .map(([checkpointId, at, of]) => seen(checkpointId, at, of));
    const error = fc.constantFrom(ERROR, null, { figure: { ...FIGURE, withinSd: 0 } } as SeriesError);
    const fixed = [...Object.values(CHANGE_WORDS), /^too few observations \(\d+ of at least \d+\)$/];
    fc.assert(
      fc.property(fc.array(recorded, { maxLength: 60 }), error, (observations, of) => {
        for (const { words, figures } of changesOf(observations, of)) {
          expect(fixed.some((each) => (typeof each === "string" ? each === words : each.test(words)))).toBe(
            true,
          );
          expect(figures.join(" ")).not.toMatch(/NaN|Infinity|undefined|null/);
        }
      }),
    );
  });
});
