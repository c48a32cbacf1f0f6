import { describe, expect, it } from "vitest";
import { notOfferedInWords, whyNotOffered } from "@/server/domain/rule-books/book-choice";
import { nextVersion, ownCopy } from "@/server/domain/rule-books/own-book";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";

const SAMPLE = { ...USA_BASEBALL_2018, id: "a-sample", standing: "sample", sampleYear: 2017 } as const;

describe("a book of the academy's own", () => {
  it("is a copy under a name of its own that keeps the year of its sample", () => {
    expect(ownCopy(SAMPLE, { id: "rbk_1", name: "Ours" })).toEqual({
      ...SAMPLE,
      ...{ id: "rbk_1", name: "Ours", standing: "own" },
    });
  });

  it("stays what it is in its next version, whatever the change says", () => {
    const own = ownCopy(SAMPLE, { id: "rbk_1", name: "Ours" });
    const changed = { ...USA_BASEBALL_2018, name: "Renamed" };
    expect(nextVersion(own, changed)).toEqual({ ...changed, id: "rbk_1", standing: "own", sampleYear: 2017 });
  });
});

describe("a book is offered", () => {
  const state = { book: USA_BASEBALL_2018, isArchived: false, isConfirmed: false };
  const advice = USA_BASEBALL_2018.rules.map((rule) => ({ ...rule, level: "advice" as const }));

  it.each([
    ["when it is published", {}, null],
    ["never while it is a sample that nobody confirmed", { book: SAMPLE }, "not_confirmed"],
    ["when it is a sample that was confirmed", { book: SAMPLE, isConfirmed: true }, null],
    ["never once it was put aside, confirmed or not", { isArchived: true, isConfirmed: true }, "archived"],
    ["never when it only advises", { book: { sampleYear: null, rules: advice } }, "no_limits"],
  ] as const)("%s", (_when, change, why) => {
    expect(whyNotOffered({ ...state, ...change })).toBe(why);
    if (why) expect(notOfferedInWords(why)).toMatch(/^It .+\.$/);
  });
});
