import { describe, expect, it } from "vitest";
import { LITTLE_LEAGUE_BASEBALL } from "@/server/domain/throwing/books/little-league-baseball";
import { TOURNAMENT_INNINGS } from "@/server/domain/throwing/books/tournament-innings";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { type ArmQuestion, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import type { ThrowEntry } from "@/server/domain/throwing/throw-entry";
import { limitInWords, whyInSentences } from "@/server/domain/throwing/why";
import { isOtherReason, otherSentence, outsInWords } from "@/server/domain/throwing/why-other";
import { inWords, thrownOrPlanned } from "@/server/domain/throwing/why-words";
import { ask, entry, plan } from "./arm-question";

const LEAGUE: ArmQuestion["books"] = [LITTLE_LEAGUE_BASEBALL];
const INNINGS: ArmQuestion["books"] = [TOURNAMENT_INNINGS];
const BOTH: ArmQuestion["books"] = [USA_BASEBALL_2018, LITTLE_LEAGUE_BASEBALL];

// Wed 25 Nov 2026, an athlete of 12.
const DAY = "2026-11-25";
const game = (day: string, pitches: number, more: Partial<ThrowEntry> = {}) => entry([day, pitches], more);

const CASES: [name: string, question: ArmQuestion, words: string, why: string[]][] = [
  [
    "a rest by the start of the last batter",
    ask(DAY, { books: LEAGUE, entries: [game("2026-11-24", 51, { pitchesAtLastBatter: 45 })] }),
    "none by the book",
    ["51 on Tue 24 Nov, 45 before the last batter, asks for two days of rest; free again Fri 27 Nov."],
  ],
  [
    "four innings caught",
    ask(DAY, { books: LEAGUE, entries: [game(DAY, 0, { inningsCaught: 4 })] }),
    "none by the book",
    ["Caught 4 innings on this day: the book has no pitching on such a day.", "Free again Thu 26 Nov."],
  ],
  [
    "41 pitches thrown, one game had",
    ask(DAY, { books: LEAGUE, entries: [game(DAY, 41)] }),
    "at most 44 by the book",
    [
      "The book's number for a day at age 12 is 85, counted before a batter that is finished.",
      "41 already thrown on this day come off that.",
      "One game a day by the book, and this day has one.",
      "With 41 pitches in games, may not catch any more that day.",
    ],
  ],
  [
    "innings of a day",
    ask(DAY, { books: INNINGS, entries: [game(DAY, 30, { outs: 7 })] }),
    "at most 3 2/3 innings by the book",
    [
      "The book's innings for a day at age 12 are 6.",
      "2 1/3 innings already thrown on this day come off that.",
    ],
  ],
  [
    "the one inning left, by the days before",
    ask(DAY, {
      ...{ books: INNINGS },
      entries: [game("2026-11-24", 40, { outs: 9 }), game("2026-11-23", 60, { outs: 12, id: "x" })],
    }),
    "at most 1 inning by the book",
    [
      "At most 8 innings over three days by the book; those to Wed 25 Nov have 7.",
      "The book's innings for a day at age 12 are 6.",
    ],
  ],
  [
    "a long day before",
    ask(DAY, { books: INNINGS, entries: [game("2026-11-24", 60, { outs: 10 })] }),
    "none by the book",
    ["3 1/3 innings on Tue 24 Nov ask for the next day free; free again Thu 26 Nov."],
  ],
  [
    "eight innings reached over three days",
    ask(DAY, {
      ...{ books: INNINGS },
      entries: [6, 9, 9].map((outs, index) => game(`2026-11-${22 + index}`, 40, { outs, id: `${index}` })),
    }),
    "none by the book",
    [
      "8 innings over three days to Tue 24 Nov ask for the next day free; free again Thu 26 Nov.",
      "Thrown on Sun 22 Nov, Mon 23 Nov and Tue 24 Nov: the book has no fourth day in a row.",
    ],
  ],
  [
    "an outing tomorrow, by innings",
    { ...ask(DAY, { books: INNINGS }), planned: [plan(["2026-11-26", 40])] },
    "at most 3 innings by the book",
    [
      "At most 3 innings by the book, because the outing on Thu 26 Nov is the next day.",
      "The book's innings for a day at age 12 are 6.",
    ],
  ],
  [
    "games without their innings",
    ask(DAY, { books: INNINGS, entries: [game("2026-11-24", 40), game("2026-11-23", 40, { id: "x" })] }),
    "at most 6 innings by the book",
    ["The book's innings for a day at age 12 are 6.", "The log does not say the innings of two games: ask."],
  ],
  [
    "two books, one of them stricter",
    ask(DAY, { books: BOTH, entries: [game(DAY, 30, { intentionalWalks: 2 })] }),
    "at most 47 by the book",
    [
      "The book's number for a day at age 12 is 85, counted before a batter that is finished.",
      "38 already thrown on this day come off that.",
      "One game a day by the book, and this day has one.",
      "This is by Little League Baseball, Regulation VI, the strictest of the books on this day.",
    ],
  ],
  [
    "pitches by one book, innings by another",
    ask(DAY, { books: [USA_BASEBALL_2018, TOURNAMENT_INNINGS] }),
    "at most 85 by the book, in at most 6 innings",
    [
      "The book's number for a day at age 12 is 85.",
      "The book's innings for a day at age 12 are 6.",
      "This is by MLB and USA Baseball guideline, since 2018, the strictest of the books on this day.",
    ],
  ],
];

describe("every rule in words", () => {
  it.each(CASES)("%s", (_name, question, words, why) => {
    const answer = pitchesAllowed(question);
    expect(limitInWords(answer)).toBe(words);
    expect(whyInSentences(answer)).toEqual(why);
  });

  it("never words a number as a permission", () => {
    for (const [, question] of CASES) {
      const answer = pitchesAllowed(question);
      const all = [limitInWords(answer), ...whyInSentences(answer)].join(" ");
      expect(all).not.toMatch(/\b(may(?! not)|can|allowed|safe|ok)\b/i);
    }
  });

  it("has words for small things", () => {
    expect([inWords(0), inWords(10), inWords(11)]).toEqual(["no", "ten", "11"]);
    expect([outsInWords(1), outsInWords(3), outsInWords(4)]).toEqual([
      "1/3 inning",
      "1 inning",
      "1 1/3 innings",
    ]);
    expect(thrownOrPlanned({ entryIds: ["a"], plannedIds: ["b"] })).toBe("thrown or planned");
    const one = { kind: "outs_not_said" as const, entryIds: ["a"], plannedIds: [] };
    expect(isOtherReason(one)).toBe(true);
    expect(otherSentence(one, null)).toBe("The log does not say the innings of one game: ask.");
  });
});
