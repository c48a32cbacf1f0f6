import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CHANGE_WORDS, type Change, type SinceCorrection } from "@/server/domain/mechanics/change";
import { changeInWords } from "@/server/domain/mechanics/change-in-words";
import { chanceByError, testOfChange } from "@/server/domain/mechanics/change-test";
import type { ErrorFigure } from "@/server/domain/mechanics/measure-error";
import { type ObservedDay, observedDays, type SeriesKind } from "@/server/domain/mechanics/observation";
import { FEWEST_A_SIDE, MOST_CHANCE, sinceCorrection } from "@/server/domain/mechanics/since-correction";
import type { WantedDirection } from "@/server/domain/mechanics/wanted-direction";
import { addDays } from "@/server/domain/time/calendar-day";
import { expectFinite } from "../statistics/agree";
import { GIVEN_ON, knownError, observation, weekly } from "./observations";

const MORE = { kind: "more" } as const;

function changeOf(
  days: ObservedDay[],
  { kind = "judgement", wanted = MORE, error = knownError(0.5), seenOn = null }: Of = {},
): SinceCorrection {
  return sinceCorrection({ kind, days }, { givenOn: GIVEN_ON, seenOn }, wanted, error);
}
interface Of {
  kind?: SeriesKind;
  wanted?: WantedDirection;
  error?: ErrorFigure | null;
  seenOn?: string | null;
}

const change = (since: SinceCorrection): Change => {
  if (since.kind === "too_few") throw new Error(since.words);
  return since;
};

/* By hand: medians 0 and 3; 1.96 × √2 × 0.5 = 1.386; 3 / 1.386 = 2.165; the two sides apart in 2 of 20 splits. */
describe("since a correction", () => {
  it("tells an improvement of three steps, 2.2 times what is more than error, chance 2 of 20", () => {
    const since = change(changeOf(weekly([0, 1, 0], [2, 3, 3])));
    expect(since).toMatchObject({
      ...{ outcome: "improved", words: "improved beyond measurement error", change: 3 },
      before: { days: 3, median: 0 },
      after: { days: 3, median: 3 },
      test: { method: "permutation", chance: 0.1, direction: 1 },
    });
    expect(since.detectableChange).toBeCloseTo(1.3859, 4);
    expect(since.inDetectable).toBeCloseTo(2.1646, 4);
  });

  const knee = { kind: "front_knee_flexion", error: knownError(1) } as const;
  /* 1.96 × √2 × 1 = 2.77 degrees. */
  it.each([
    ["worse", "less than before, where more is better", [44, 45, 46], [38, 39, 40], MORE],
    ["improved", "less than before, where less is better", [44, 45, 46], [38, 39, 40], { kind: "less" }],
    ["improved", "nearer to 0 from the other side", [-12, -11, -13], [3, 2, 4], { kind: "nearer", to: 0 }],
    ["worse", "farther off", [1, -1, 2], [-9, -10, -11], { kind: "nearer", to: 0 }],
    ["changed", "where nobody said which way is better", [44, 45, 46], [38, 39, 40], { kind: "unstated" }],
    ["no_change", "by 2.7 degrees, less than 2.77", [44, 45, 46], [46.7, 47.7, 48.7], MORE],
    ["no_change", "by 3 degrees, but days overlap: 10 of 20 splits", [40, 45, 49], [42, 48, 50], MORE],
    ["no_change", "in nothing: all values equal", [45, 45, 45], [45, 45, 45], MORE],
    ["no_change", "in the middle alone, the means the other way", [0, 40, 41], [43, 44, -90], MORE],
  ] as const)("says %s %s", (outcome, _, before, after, wanted) => {
    const since = changeOf(weekly(before, after), { ...knee, wanted });
    expect(since).toMatchObject({ kind: "change", outcome, words: CHANGE_WORDS[outcome] });
    expectFinite(since);
  });

  it("leaves out the day that called for it where three others are there, and only then", () => {
    const four = changeOf(weekly([40, 41, 42, 20], [41, 41, 41]), { ...knee, seenOn: GIVEN_ON });
    expect(four).toMatchObject({
      before: { days: 3, median: 41 },
      isTriggerLeftOut: true,
      outcome: "no_change",
    });
    const three = changeOf(weekly([40, 42, 20], [41, 41, 41]), { ...knee, seenOn: GIVEN_ON });
    expect(three).toMatchObject({ before: { days: 3, median: 40 }, isTriggerLeftOut: false });
    const unknown = changeOf(weekly([40, 41, 42, 20], [41, 41, 41]), knee);
    expect(unknown).toMatchObject({ before: { days: 4, median: 40.5 }, isTriggerLeftOut: false });
  });

  it("counts the day of giving as before: what is said today shows tomorrow", () => {
    const days = weekly([0, 0, 3], [3, 3, 3]);
    expect(changeOf(days)).toMatchObject({ before: { days: 3 }, after: { days: 3 } });
  });

  it.each([
    ["nothing at all", [], [], "before", 0, 3],
    ["one day", [1], [], "before", 1, 3],
    ["two days before", [1, 1], [2, 2, 2], "before", 2, 3],
    ["two days since", [1, 1, 1], [2, 2], "after", 2, 3],
  ] as const)(
    "of %s says too few observations, and how many it takes",
    (_, before, after, of, have, needed) => {
      const since = changeOf(weekly(before, after));
      expect(since).toEqual({
        ...{ kind: "too_few", of, have, needed },
        words: `too few observations (${have} of at least ${needed})`,
      });
    },
  );

  it("says too few while the error of a day is not known well enough to be printed", () => {
    const days = weekly([0, 0, 0], [3, 3, 3]);
    expect(changeOf(days, { error: null })).toMatchObject({ of: "repeats", have: 0, needed: 15 });
    expect(changeOf(days, { error: knownError(0.5, 14) })).toMatchObject({ of: "repeats", have: 14 });
    expect(changeOf(days, { error: knownError(0.5, 15) })).toMatchObject({ outcome: "improved" });
  });

  it("with an error of 0 asks for a change that shows when it is written, and divides by nothing", () => {
    const none = { kind: "front_knee_flexion", error: knownError(0) } as const;
    expect(changeOf(weekly([40, 40, 40], [40.5, 40.5, 40.5]), none)).toMatchObject({ outcome: "no_change" });
    expect(changeOf(weekly([40, 40, 40], [41, 41, 41]), none)).toMatchObject({
      ...{ outcome: "improved", inDetectable: null, chanceByError: 0 },
    });
  });

  it("tells an improvement at three days a side, the least there may be", () => {
    expect([FEWEST_A_SIDE, MOST_CHANCE]).toEqual([3, 0.1]);
  });
});

describe("the test of a change", () => {
  it("tries every split up to 6 a side, beyond that compares the ranks", () => {
    expect(testOfChange([0, 1, 0], [2, 3, 3]).chance).toBe(0.1);
    const [low, high] = [Array.from({ length: 7 }, (_, at) => at), [10, 11, 12]];
    /* 7 and 3: the two outermost of 120 splits. */
    expect(testOfChange(low, high)).toEqual({ method: "rank_sum", chance: 2 / 120, direction: 1 });
    expect(testOfChange([], [1])).toEqual({ method: "rank_sum", chance: 1, direction: 0 });
    expect(testOfChange([2, 2], [2, 2])).toEqual({ method: "permutation", chance: 1, direction: 0 });
  });

  it("weighs a change by error alone: t 2 on 20 degrees of freedom is 0.0593", () => {
    expect(chanceByError(2.0467, knownError(1), 3, 3)).toBeCloseTo(0.0593, 4);
    expect(chanceByError(0, knownError(0), 3, 3)).toBe(1);
  });
});

describe("a change in words", () => {
  it("begins with the fixed words, and no chance stands without them", () => {
    expect(changeInWords("judgement", changeOf(weekly([0, 1, 0], [2, 3, 3])))).toEqual([
      "Improved beyond measurement error.",
      "Median 0 of 3 days before, 3 of 3 days after: 3 steps more, 2.2 times the 1.4 steps that two observations must differ by to be more than error.",
      "By every split of the days, the chance of days so far apart if nothing changed is 0.10.",
    ]);
  });

  it("says what is left out, what nobody said, and what could not be seen", () => {
    const days = weekly([40, 41, 42, 20], [41, 41, 41]);
    const of = { kind: "front_knee_flexion", error: knownError(0), seenOn: GIVEN_ON } as const;
    const since = changeOf(days, { ...of, wanted: { kind: "unstated" } });
    expect(changeInWords("front_knee_flexion", since, 2)).toEqual([
      "No change that can be told from error.",
      "Median 41° of 3 days before, 41° of 3 days after: 0°; repeats never differed, so the error is taken as 0.",
      "By every split of the days, the chance of days so far apart if nothing changed is 1.00.",
      "Nobody said which way is better.",
      "The day that called for the correction is left out.",
      "It was looked for 2 times more and could not be seen.",
    ]);
  });

  it("of too few says what is short, and no chance", () => {
    expect(changeInWords("judgement", changeOf(weekly([1]))).join(" ")).toBe(
      "Too few observations (1 of at least 3). Days before the correction are too few.",
    );
    const noError = changeOf(weekly([1, 1, 1], [1, 1, 1]), { error: null });
    expect(changeInWords("judgement", noError, 1)[2]).toMatch(/looked for once more/);
  });
});

describe("whatever was seen", () => {
  const values = fc.array(fc.integer({ min: -90, max: 90 }), { maxLength: 9 });
  const sd = fc.constantFrom(0, 0.5, 3, 10);
  const wantedOnes = fc.constantFrom<WantedDirection>(
    MORE,
    { kind: "less" },
    { kind: "nearer", to: 7 },
    { kind: "unstated" },
  );
  const knee = "front_knee_flexion";

  it("gives the fixed words and never NaN, with one look or none, equal or at odds", () => {
    fc.assert(
      fc.property(values, values, wantedOnes, sd, (before, after, wanted, withinSd) => {
        const since = changeOf(weekly(before, after), { kind: knee, wanted, error: knownError(withinSd) });
        const fixed: string[] = Object.values(CHANGE_WORDS);
        expect(fixed.includes(since.words) || since.words.startsWith("too few observations (")).toBe(true);
        expectFinite(since);
        expect(changeInWords(knee, since).join(" ")).not.toMatch(/NaN|Infinity|undefined|null/);
      }),
    );
  });

  it("turns improved into worse with the wanted direction, and nothing else", () => {
    const turned = {
      improved: "worse",
      worse: "improved",
      no_change: "no_change",
      changed: "changed",
    } as const;
    fc.assert(
      fc.property(values, values, (before, after) => {
        const [one, other] = ([{ kind: "more" }, { kind: "less" }] as const).map((wanted) =>
          changeOf(weekly(before, after), { kind: knee, wanted, error: knownError(3) }),
        );
        if (one?.kind !== "change" || other?.kind !== "change") {
          expect(other).toEqual(one);
          return;
        }
        expect(other.outcome).toBe(turned[one.outcome]);
        expect(other.test.chance).toBeCloseTo(one.test.chance, 12);
      }),
    );
  });

  it("tells nothing that the same change with a greater error would not have been asked for", () => {
    fc.assert(
      fc.property(values, values, (before, after) => {
        const of = (withinSd: number) =>
          changeOf(weekly(before, after), { kind: knee, error: knownError(withinSd) });
        const [sure, unsure] = [of(2), of(8)];
        const isTold = unsure.kind === "change" && unsure.outcome !== "no_change";
        if (isTold) expect(sure.words).toBe(unsure.words);
      }),
    );
  });

  it("counts three deliveries of one day as one day: two days since are too few", () => {
    const days = observedDays(
      [-14, -7, 0, 7, 14, 14, 14].map((after) =>
        observation({ kind: "judgement", value: after > 0 ? 3 : 0, day: addDays(GIVEN_ON, after) }),
      ),
    );
    expect(changeOf(days)).toMatchObject({ kind: "too_few", of: "after", have: 2 });
  });
});
