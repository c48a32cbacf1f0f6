import { describe, expect, it } from "vitest";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import { PAIN_KIND_WORDS, THROW_KIND_WORDS, throwsInWords } from "@/server/domain/throwing/throw-words";

describe("throws in words", () => {
  it.each([
    ["game", 35, "35 pitches, game"],
    ["bullpen", 1, "1 pitch, bullpen"],
    ["long_toss", 60, "60 throws, long toss"],
    ["weighted_balls", 1, "1 throw, weighted balls"],
    ["long_toss", 0, "nothing thrown, long toss"],
  ] as const)("names %s with %i", (kind, count, words) => {
    expect(throwsInWords(kind, count)).toBe(words);
  });

  it("has different words for every kind", () => {
    expect(new Set(THROW_KINDS.map((kind) => THROW_KIND_WORDS[kind])).size).toBe(THROW_KINDS.length);
    expect(PAIN_KIND_WORDS.pain).not.toBe(PAIN_KIND_WORDS.unusual_fatigue);
  });
});
