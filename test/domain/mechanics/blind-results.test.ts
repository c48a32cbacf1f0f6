import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BlindItem, blindResults, type GivenRating } from "@/server/domain/mechanics/blind-results";
import type { SeriesKind } from "@/server/domain/mechanics/observation";
import { expectFinite } from "../statistics/agree";

const itemsOf = (count: number, kind: SeriesKind): BlindItem[] =>
  Array.from({ length: count }, (_, at) => ({
    ...{ itemId: `${at}`, checkpointId: at % 2 ? "odd" : "even", kind },
  }));
/** A row an item, a column a coach: a number, null for what could not be seen, undefined for what was not rated. */
const saidOf = (table: readonly (readonly (number | null | undefined)[])[]): GivenRating[] =>
  table.flatMap((row, item) =>
    row.flatMap((value, coach) =>
      value === undefined ? [] : [{ itemId: `${item}`, coachId: `coach ${coach}`, value }],
    ),
  );

describe("what a closed set says", () => {
  it("of measures is ICC(2,1), to the figure of Shrout and Fleiss 1979", () => {
    const { ratings_targets_by_judges: table, expected } = JSON.parse(
      readFileSync("test/reference/icc.json", "utf8"),
    );
    const { kinds } = blindResults(itemsOf(table.length, "front_knee_flexion"), saidOf(table));
    expect(kinds).toHaveLength(1);
    expect(kinds[0]?.measures?.figure).toBeCloseTo(expected["ICC(2,1)"].icc, 9);
    expect(kinds[0]).toMatchObject({ judgements: null, unseen: 0, tooFew: null });
  });

  it("tells each kind alone: a judgement is never set beside a measure", () => {
    const items = [
      ...itemsOf(6, "judgement"),
      ...itemsOf(6, "stride_length").map((each) => ({ ...each, itemId: `m${each.itemId}` })),
    ];
    const table = [0, 1, 2, 3, 1, 2].map((value) => [value, value]);
    const lengths = saidOf(table.map(([value = 0]) => [value + 80, value + 82]));
    const said = [...saidOf(table), ...lengths.map((each) => ({ ...each, itemId: `m${each.itemId}` }))];
    const { kinds } = blindResults(items, said);
    expect(kinds.map(({ kind }) => kind)).toEqual(["judgement", "stride_length"]);
    expect(kinds[0]?.judgements?.pairs).toMatchObject([{ items: 6, figure: expect.closeTo(1, 9) }]);
    expect(kinds[1]?.byCoach).toEqual([
      { coachId: "coach 0", offset: -2 },
      { coachId: "coach 1", offset: 2 },
    ]);
  });

  it("says at which checkpoint who lies where, the farthest apart first", () => {
    const table = [0, 1, 2, 3, 1, 2].map((value, at) => [value * 10, value * 10 + (at % 2 ? 6 : 0)]);
    const [found] = blindResults(itemsOf(6, "front_knee_flexion"), saidOf(table)).kinds;
    expect(found?.byCheckpoint).toMatchObject([
      { checkpointId: "odd", items: 3, apart: 6 },
      { checkpointId: "even", items: 3, apart: 0 },
    ]);
    expect(found?.byCheckpoint[0]?.byCoach).toEqual([
      { coachId: "coach 0", offset: -6 },
      { coachId: "coach 1", offset: 6 },
    ]);
  });

  it("names every frame on which two differ by what shows, with what each said, the farthest first", () => {
    const table = [
      [40, 40.4],
      [30, 33],
      [50, 44],
      [20, null],
      [10, 10],
    ];
    const [found] = blindResults(itemsOf(5, "front_knee_flexion"), saidOf(table)).kinds;
    expect(found?.itemsApart.map(({ itemId, apart }) => [itemId, apart])).toEqual([
      ["2", 6],
      ["1", 3],
    ]);
    expect(found?.itemsApart[0]?.said.map(({ value }) => value)).toEqual([50, 44]);
    expect(found?.unseen).toBe(1);
  });

  it("names a coach who rated fewer than half, and keeps their few frames from being all that is left", () => {
    const table = [0, 1, 2, 3, 1, 2, 0, 3, 1, 2, 3, 0].map((value, at) => [
      value,
      value,
      at < 5 ? 0 : undefined,
    ]);
    const { kinds, uncounted } = blindResults(itemsOf(12, "judgement"), saidOf(table));
    expect(uncounted).toEqual([{ coachId: "coach 2", rated: 5 }]);
    expect(kinds[0]?.judgements?.pairs).toMatchObject([{ items: 12, figure: expect.closeTo(1, 9) }]);
  });

  it.each([
    ["nobody", [], "too few coaches (0 of at least 2)"],
    ["one coach", saidOf([[0], [1], [2], [3], [1]]), "too few coaches (1 of at least 2)"],
  ])("of %s says so in the fixed words", (_, said, words) => {
    const [found] = blindResults(itemsOf(5, "judgement"), said).kinds;
    expect(found?.tooFew).toBe(words);
  });

  it("of two coaches who saw too few of the same says how few", () => {
    const table = [
      [1, 1],
      [2, 2],
      [0, null],
      [1, null],
      [null, 2],
    ];
    const [found] = blindResults(itemsOf(5, "judgement"), saidOf(table)).kinds;
    expect(found?.judgements?.pairs[0]?.words).toBe("too few observations (2 of at least 5)");
  });

  it("holds no NaN, whatever was said and left out", () => {
    const value = fc.option(fc.integer({ min: 0, max: 3 }), { nil: null });
    const row = fc.array(fc.option(value, { nil: undefined }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(
        fc.array(row, { maxLength: 14 }),
        fc.constantFrom("judgement", "stride_length"),
        (table, kind) => {
          expectFinite(blindResults(itemsOf(table.length, kind), saidOf(table)));
        },
      ),
    );
  });
});
