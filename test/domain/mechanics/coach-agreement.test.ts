import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BlindRating,
  coachesOf,
  FEWEST_ITEMS,
  itemsOfAll,
  pairsOf,
} from "@/server/domain/mechanics/blind-ratings";
import { judgementAgreement, measureAgreement } from "@/server/domain/mechanics/coach-agreement";
import { coachDifferences, offsetInWords } from "@/server/domain/mechanics/coach-differences";
import { expectFinite } from "../statistics/agree";

const COACHES = ["ada", "ben", "cleo", "dan"];
/** A row an item, a column a coach; null where a coach has not seen it. */
const ratingsOf = (table: readonly (readonly (number | null)[])[]): BlindRating[] =>
  table.flatMap((row, item) =>
    row.flatMap((value, coach) =>
      value === null
        ? []
        : [
            {
              itemId: `${item}`,
              checkpointId: item % 2 ? "odd" : "even",
              coachId: `${COACHES[coach]}`,
              value,
            },
          ],
    ),
  );

describe("agreement on measures", () => {
  const { ratings_targets_by_judges: published, expected } = JSON.parse(
    readFileSync("test/reference/icc.json", "utf8"),
  );

  it("is ICC(2,1), to the figure of Shrout and Fleiss 1979 and its interval by R", () => {
    const found = measureAgreement("front_knee_flexion", ratingsOf(published));
    expect(found.figure).toBeCloseTo(expected["ICC(2,1)"].icc, 9);
    expect(found.lower).toBeCloseTo(expected["ICC(2,1)"].ci95[0], 6);
    expect(found.upper).toBeCloseTo(expected["ICC(2,1)"].ci95[1], 6);
    /* The published mean square within is 6.26: 1.96 × √6.2639 = 4.9. */
    expect(found.words).toBe(
      "ICC(2,1) 0.29 (0.02 to 0.76) of 4 coaches on 6 frames. 95 of 100 measures lie within 4.9° of what coaches say on average.",
    );
  });

  it("counts a coach who always reads five degrees more as a difference, and says who that is", () => {
    const even = [10, 20, 30, 40, 50, 60].map((value) => [value, value]);
    const apart = even.map(([one = 0, other = 0]) => [one, other + 5]);
    const [same, moved] = [even, apart].map((table) =>
      measureAgreement("front_knee_flexion", ratingsOf(table)),
    );
    expect(same?.figure).toBe(1);
    expect(moved?.figure).toBeLessThan(0.98);
    expect(moved?.differences.byCoach).toEqual([
      { coachId: "ada", offset: -5 },
      { coachId: "ben", offset: 5 },
    ]);
  });

  it("leaves out what not every coach has measured, and says how many", () => {
    const table = [
      [40, 41],
      [50, 52],
      [45, null],
      [30, 33],
      [60, 58],
      [null, 20],
      [44, 44],
    ];
    expect(measureAgreement("front_knee_flexion", ratingsOf(table))).toMatchObject({ items: 5, leftOut: 2 });
  });

  it.each([
    ["nobody", [], "too few coaches (0 of at least 2)"],
    ["one coach", [[40], [50]], "too few coaches (1 of at least 2)"],
    [
      "four items",
      [
        [1, 2],
        [2, 3],
        [3, 4],
        [4, 4],
      ],
      "too few observations (4 of at least 5)",
    ],
    [
      "equal measures",
      Array(6).fill([40, 40]),
      "No measure differed from any other of 2 coaches on 6 frames: agreement cannot be told.",
    ],
  ] as [string, number[][], string][])("of %s says so", (_, table, words) => {
    expect(measureAgreement("front_knee_flexion", ratingsOf(table))).toMatchObject({ figure: null, words });
    expect(FEWEST_ITEMS).toBe(5);
  });
});

describe("agreement on judgements", () => {
  /* By hand: one of five is a step apart, mean d² = 0.2. The first coach's 0 1 2 3 0 have the mean 1.2 and variance
     1.36, the second's 0 1 2 3 1 1.4 and 1.04: by chance d² = 1.36 + 1.04 + 0.2² = 2.44. 1 - 0.2 / 2.44 = 0.918. */
  it("is kappa with quadratic weights, two by two: 1 - 0.2 / 2.44", () => {
    const [pair] = judgementAgreement(
      ratingsOf([
        [0, 0],
        [1, 1],
        [2, 2],
        [3, 3],
        [0, 1],
      ]),
    ).pairs;
    expect(pair?.figure).toBeCloseTo(1 - 0.2 / 2.44, 12);
    expect(pair?.coaches).toEqual(["ada", "ben"]);
    expect(pair?.words).toMatch(
      /^Weighted kappa 0\.92 \(0\.\d\d to 1\.00\), the same step on 4 of 5 frames\.$/,
    );
  });

  it("tells each pair on the items both have judged", () => {
    const table = [
      [0, 0, 1],
      [1, 1, 1],
      [2, 2, 1],
      [3, 3, 1],
      [1, 1, null],
      [2, 3, null],
    ];
    const { pairs } = judgementAgreement(ratingsOf(table));
    expect(pairs.map(({ coaches, items }) => [coaches.join(" "), items])).toEqual([
      ["ada ben", 6],
      ["ada cleo", 4],
      ["ben cleo", 4],
    ]);
    expect(pairs[1]?.words).toBe("too few observations (4 of at least 5)");
  });

  it("of full agreement tells no interval, and of one step throughout no figure", () => {
    const full = judgementAgreement(ratingsOf([0, 1, 2, 3, 1].map((value) => [value, value]))).pairs[0];
    expect(full).toMatchObject({ figure: 1, lower: null, upper: null });
    expect(full?.words).toBe("Weighted kappa 1.00, the same step on 5 of 5 frames.");
    const one = judgementAgreement(ratingsOf(Array(6).fill([2, 2]))).pairs[0];
    expect(one?.figure).toBeNull();
    expect(one?.words).toMatch(/^The same step on 6 of 6 frames, and it was one step throughout/);
  });

  it("of nobody has no pair, and refuses what is no judgement", () => {
    expect(judgementAgreement([])).toEqual({
      pairs: [],
      differences: { byCoach: [], byCheckpoint: [], itemIds: [] },
    });
    expect(() => judgementAgreement(ratingsOf([[1.5, 2]]))).toThrow(RangeError);
    expect(pairsOf(["a", "b", "c"])).toEqual([
      ["a", "b"],
      ["a", "c"],
      ["b", "c"],
    ]);
  });
});

describe("on what coaches differ", () => {
  it("is told by coach, by checkpoint and by item, the farthest apart first", () => {
    const ratings = ratingsOf([
      [40, 41],
      [50, 56],
      [30, 30],
      [20, 22],
    ]);
    const items = itemsOfAll(ratings, coachesOf(ratings));
    /* Ada is 1, 6, 0 and 2 below: 2.25. Odd items are 6 and 2 apart, even ones 1 and 0. */
    expect(coachDifferences(items, coachesOf(ratings))).toEqual({
      byCoach: [
        { coachId: "ada", offset: -2.25 },
        { coachId: "ben", offset: 2.25 },
      ],
      byCheckpoint: [
        { checkpointId: "odd", items: 2, apart: 4 },
        { checkpointId: "even", items: 2, apart: 0.5 },
      ],
      itemIds: ["1", "3", "0"],
    });
  });

  it("counts the first of two ratings of one coach: the second is not blind", () => {
    const [first] = ratingsOf([[40, 41]]);
    if (!first) throw new Error("There is one.");
    const again = { ...first, value: 90 };
    expect(itemsOfAll([...ratingsOf([[40, 41]]), again], ["ada", "ben"])[0]?.values).toEqual([40, 41]);
  });

  it("is told after a coach's name", () => {
    expect(offsetInWords("front_knee_flexion", -2)).toBe("2° less than the others");
    expect(offsetInWords("judgement", 0.6)).toBe("0.6 steps more than the others");
    expect(offsetInWords("judgement", -0.01)).toBe("as the others");
  });
});

describe("whatever coaches say", () => {
  const cell = fc.option(fc.integer({ min: 0, max: 3 }), { freq: 6 });
  const tables = fc.array(fc.tuple(cell, cell, cell), { maxLength: 15 });

  it("has words and no NaN, for measures and for judgements", () => {
    fc.assert(
      fc.property(tables, (table) => {
        const ratings = ratingsOf(table);
        const measured = measureAgreement("front_knee_flexion", ratings);
        const judged = judgementAgreement(ratings);
        expectFinite([measured, judged]);
        const words = [measured.words, ...judged.pairs.map((pair) => pair.words)];
        expect(words.every((each) => each.length > 10 && !/NaN|null|Infinity|undefined/.test(each))).toBe(
          true,
        );
      }),
    );
  });

  it("agrees alike whoever comes first", () => {
    fc.assert(
      fc.property(tables, (table) => {
        const turned = table.map(([one, other]) => [other, one]);
        const figures = [table.map(([one, other]) => [one, other]), turned].map(
          (each) => judgementAgreement(ratingsOf(each)).pairs[0]?.figure ?? null,
        );
        if (figures[0] === null || figures[0] === undefined) expect(figures[1]).toBeNull();
        else expect(figures[1]).toBeCloseTo(figures[0], 9);
      }),
    );
  });
});
