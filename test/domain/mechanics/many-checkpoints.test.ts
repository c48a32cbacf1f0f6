import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CHANGE_WORDS, type ChangeOutcome, type SinceCorrection } from "@/server/domain/mechanics/change";
import { FALSE_SHARE, type LookedAt, manyCheckpoints } from "@/server/domain/mechanics/many-checkpoints";

const looked = (chance: number, outcome: ChangeOutcome = "improved"): SinceCorrection => ({
  ...{ kind: "change", outcome, words: CHANGE_WORDS[outcome], wanted: { kind: "more" } },
  before: { days: 3, median: 0 },
  after: { days: 3, median: 2 },
  ...{ change: 2, detectableChange: 1, inDetectable: 2, chanceByError: chance, isTriggerLeftOut: false },
  test: { method: "permutation", chance: 0.1, direction: 1 },
});
const tooFew: SinceCorrection = {
  ...{ kind: "too_few", of: "after", have: 1, needed: 3 },
  words: "too few observations (1 of at least 3)",
};
const named = (all: readonly SinceCorrection[]): LookedAt[] =>
  all.map((since, at) => ({ id: `${at}`, since }));

describe("many checkpoints", () => {
  /* By hand: 0.01 × 3 = 0.03; 0.04 × 3 / 2 = 0.06; 0.2. */
  it("let a change stand whose chance, adjusted for all that were looked at, stays at 0.05, and say how many those were", () => {
    const many = manyCheckpoints(named([looked(0.01), looked(0.04), looked(0.2, "no_change"), tooFew]));
    expect(many.results.map(({ fellAway, since }) => [fellAway, since.words])).toEqual([
      [false, CHANGE_WORDS.improved],
      [true, CHANGE_WORDS.no_change],
      [false, CHANGE_WORDS.no_change],
      [false, tooFew.words],
    ]);
    const adjusted = many.results.map((each) => each.adjustedChance);
    expect(adjusted[0]).toBeCloseTo(0.03, 12);
    expect(adjusted[1]).toBeCloseTo(0.06, 12);
    expect(adjusted.slice(2)).toEqual([0.2, null]);
    expect(many.words).toEqual([
      "3 checkpoints were looked at together; 1 changed beyond measurement error.",
      "1 more would have by itself: of so many, chance brings some.",
      "1 checkpoint was left out, with too few observations.",
    ]);
  });

  it("of none, or none with enough, say so", () => {
    expect(manyCheckpoints([])).toMatchObject({ results: [], words: ["No checkpoint was looked at."] });
    expect(manyCheckpoints(named([tooFew])).words).toEqual([
      "0 checkpoints were looked at together; 0 changed beyond measurement error.",
      "1 checkpoint was left out, with too few observations.",
    ]);
  });

  it("never tell more than each alone, and one alone stands as it was", () => {
    const chances = fc.array(fc.double({ min: 0, max: FALSE_SHARE, noNaN: true }), { maxLength: 20 });
    fc.assert(
      fc.property(chances, chances, (told, still) => {
        const all = named([
          ...told.map((each) => looked(each)),
          ...still.map((each) => looked(each, "no_change")),
        ]);
        const { results, lookedAt } = manyCheckpoints(all);
        expect(lookedAt).toBe(all.length);
        results.forEach(({ id, since, adjustedChance }, at) => {
          expect(id).toBe(all[at]?.id);
          expect(adjustedChance).not.toBeNaN();
          if (since.words !== all[at]?.since.words) expect(since.words).toBe(CHANGE_WORDS.no_change);
        });
        const [first] = all;
        if (first) expect(manyCheckpoints([first]).results[0]?.since).toEqual(first.since);
      }),
    );
  });

  it("where every one really changed, let every one stand", () => {
    const all = named(Array.from({ length: 20 }, (_, at) => looked(0.002 * (at + 1))));
    expect(manyCheckpoints(all).results.every(({ fellAway }) => !fellAway)).toBe(true);
  });
});
