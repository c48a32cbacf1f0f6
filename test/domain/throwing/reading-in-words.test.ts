import { describe, expect, it } from "vitest";
import { readingInWords } from "@/server/domain/throwing/reading-in-words";

describe("the reading that is on", () => {
  it.each([
    [
      ["bullpen", "lesson"],
      "Bullpens and lessons count like games here, the cautious reading; the books themselves speak of games.",
    ],
    [
      ["lesson", "bullpen"],
      "Bullpens and lessons count like games here, the cautious reading; the books themselves speak of games.",
    ],
    [["bullpen"], "Bullpens count like games here, lessons do not; the books themselves speak of games."],
    [["lesson"], "Lessons count like games here, bullpens do not; the books themselves speak of games."],
    [[], "Games, live at-bats and showcases count here, bullpens and lessons do not."],
  ] as const)("of %j is said in one sentence", (countedKinds, words) => {
    expect(readingInWords({ countedKinds })).toBe(words);
  });
});
