import { describe, expect, it } from "vitest";
import { previewInWords } from "@/components/academy/book-preview";
import { bookStateInWords, bookUseInWords } from "@/components/academy/book-words";
import { overrideInWords } from "@/components/throwing/overrides";
import type { Answers } from "@/components/wire/answers";

const BOOK: Answers["ruleBooks"]["list"]["books"][number] = {
  standing: "own",
  ...{ id: "rbk_1", name: "Ours", source: "A league", sampleYear: 2017, ages: "7 to 18" },
  ...{ inForceFrom: "2017-01-01", version: 2, basedOnName: "A sample", isArchived: false },
  saved: { byName: "Ada Frost", atMs: Date.UTC(2026, 10, 25, 20) },
  confirmation: null,
  notOffered: "not_confirmed",
  use: { athletes: 0, teams: 0 },
};

describe("where a book stands", () => {
  it("is told line by line: its year, version and origin, and why it is not offered", () => {
    expect(bookStateInWords(BOOK, "America/New_York")).toEqual([
      "Figures of 2017",
      "Version 2 by Ada Frost, Wed 25 Nov 2026; a copy of A sample",
      "Not offered. It is a sample of a past year, and no admin has confirmed that it is current.",
    ]);
  });

  it("says who confirmed it, and when", () => {
    const confirmed = { ...BOOK, saved: null, confirmation: BOOK.saved, notOffered: null };
    expect(bookStateInWords(confirmed, "America/New_York")).toEqual([
      "Figures of 2017",
      "Confirmed as current by Ada Frost, Wed 25 Nov 2026",
    ]);
  });

  it.each([
    [{ athletes: 0, teams: 0 }, "Nobody goes by it"],
    [{ athletes: 1, teams: 0 }, "1 athlete goes by it"],
    [{ athletes: 0, teams: 1 }, "1 team goes by it"],
    [{ athletes: 12, teams: 2 }, "12 athletes and 2 teams go by it"],
  ])("says who goes by it: %j", (use, words) => {
    expect(bookUseInWords(use)).toBe(words);
  });
});

describe("a comparison in one sentence", () => {
  it.each([
    [
      { daysThatDiffer: 0, athletesThatDiffer: 0, stricter: 0, looser: 0 },
      "The same answer on every day, for all 12 athletes.",
    ],
    [
      { daysThatDiffer: 3, athletesThatDiffer: 2, stricter: 3, looser: 0 },
      "Another answer on 3 days for 2 of 12 athletes: 3 stricter, 0 looser.",
    ],
    [
      { daysThatDiffer: 1, athletesThatDiffer: 1, stricter: 0, looser: 0 },
      "Another answer on 1 day for 1 of 12 athletes: 0 stricter, 0 looser, 1 of another kind.",
    ],
  ])("%j", (counts, words) => {
    expect(previewInWords({ athletes: 12, ...counts })).toBe(words);
  });
});

describe("an override in its row", () => {
  it.each([
    [{ pitches: 60, stands: true }, "60 in all, not by the book"],
    [{ pitches: 60, stands: false }, "60 in all; no longer holds"],
    [{ pitches: 0, stands: false }, "taken back"],
  ])("%j", (row, words) => {
    expect(overrideInWords(row)).toBe(words);
  });
});
