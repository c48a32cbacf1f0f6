import { describe, expect, it } from "vitest";
import { bookProblems } from "@/server/domain/rule-books/book-problems";
import { SHIPPED_BOOKS } from "@/server/domain/throwing/shipped-books";
import { OWN_BOOK } from "../../helpers/own-book";

const AT = OWN_BOOK.rules.findIndex((rule) => rule.kind === "pitch_count");
const RULE = `rules.${AT}`;
const PITCHES = "Pitches in a day and the rest after them";

/** The own book with another value at a path. */
function withValue(path: string, value: unknown) {
  const book = structuredClone(OWN_BOOK);
  const keys = path.split(".");
  const last = keys.pop() ?? "";
  const part = keys.reduce<unknown>((found, key) => (found as Record<string, unknown>)[key], book);
  (part as Record<string, unknown>)[last] = value;
  return book;
}

describe("a book that is being written", () => {
  it.each(SHIPPED_BOOKS.map((book) => [book.name, book] as const))("has nothing wrong: %s", (_name, book) => {
    expect(bookProblems(book)).toEqual({});
  });

  it.each([
    [
      "a gap between rest bands",
      `${RULE}.ageBands.0.restBands.1.minPitches`,
      25,
      `${PITCHES}, ages 7 to 8: the first pitch must be 21: no gap and no overlap.`,
    ],
    [
      "rest bands that overlap",
      `${RULE}.ageBands.0.restBands.1.minPitches`,
      20,
      `${PITCHES}, ages 7 to 8: the first pitch must be 21: no gap and no overlap.`,
    ],
    [
      "a gap between ages",
      `${RULE}.ageBands.1.ageMin`,
      10,
      `${PITCHES}, ages 10: the first age must be 9, the age after the band before.`,
    ],
    [
      "ages that overlap",
      `${RULE}.ageBands.1.ageMin`,
      8,
      `${PITCHES}, ages 8 to 10: the first age must be 9, the age after the band before.`,
    ],
    [
      "a figure that was emptied",
      `${RULE}.ageBands.0.dailyMaxPitches`,
      Number.NaN,
      `${PITCHES}, ages 7 to 8: the most in a day must be a whole number.`,
    ],
    [
      "more pitches than anybody throws",
      `${RULE}.intentionalWalkPitches`,
      5,
      `${PITCHES}: the pitches of an intentional walk must be at most 4.`,
    ],
    ["no source", `${RULE}.source`, "", `${PITCHES}: the source must be filled in.`],
    ["no name", "name", "", "The name must be filled in."],
    [
      "a rule that ends before it begins",
      `${RULE}.effectiveUntil`,
      "2000-01-01",
      `${PITCHES}: the day it ends must be later than the day it begins.`,
    ],
  ])("is told of %s at its field, in a sentence", (_what, path, value, sentence) => {
    expect(bookProblems(withValue(path, value))).toMatchObject({ [path]: sentence });
  });
});
