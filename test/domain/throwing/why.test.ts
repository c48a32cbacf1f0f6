import { describe, expect, it } from "vitest";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { type ArmQuestion, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { rulesOf } from "@/server/domain/throwing/rule-book";
import { limitInWords, whyInSentences } from "@/server/domain/throwing/why";
import { ask, entry, plan } from "./arm-question";

const pain = { firstFeltOn: "2026-11-20", lastFeltOn: "2026-11-20", reportIds: ["a"] };

const CASES: [name: string, question: ArmQuestion, words: string, why: string[]][] = [
  [
    "a rested arm",
    ask("2026-11-25"),
    "at most 85 by the book",
    ["The book's number for a day at age 12 is 85."],
  ],
  [
    "rest owed",
    ask("2026-11-28", { thrown: [["2026-11-25", 51]] }),
    "none by the book",
    ["51 on Wed 25 Nov asks for three days of rest; free again Sun 29 Nov."],
  ],
  [
    "one day of rest",
    ask("2026-11-26", { thrown: [["2026-11-25", 21]] }),
    "none by the book",
    ["21 on Wed 25 Nov asks for one day of rest; free again Fri 27 Nov."],
  ],
  [
    "an outing ahead",
    ask("2026-11-29", { planned: [["2026-12-01", 60]] }),
    "at most 35 by the book",
    [
      "At most 35 by the book, because the outing on Tue 1 Dec needs Monday's rest.",
      "The book's number for a day at age 12 is 85.",
    ],
  ],
  [
    "an outing tomorrow",
    ask("2026-11-30", { planned: [["2026-12-01", 60]] }),
    "at most 20 by the book",
    [
      "At most 20 by the book, because the outing on Tue 1 Dec is the next day.",
      "The book's number for a day at age 12 is 85.",
    ],
  ],
  [
    "an outing in three days, some thrown already",
    ask("2026-11-28", { thrown: [["2026-11-28", 15]], planned: [["2026-12-01", 60]] }),
    "at most 35 by the book",
    [
      "At most 50 by the book, because the outing on Tue 1 Dec needs the two days of rest before it.",
      "15 already thrown on this day come off that.",
      "The book's number for a day at age 12 is 85.",
    ],
  ],
  [
    "a day used up",
    ask("2026-11-25", { thrown: [["2026-11-25", 84]], planned: [["2026-11-25", 1, "lesson"]] }),
    "none by the book",
    [
      "The book's number for a day at age 12 is 85.",
      "85 already thrown or planned on this day come off that.",
      "Free again Mon 30 Nov.",
    ],
  ],
  [
    "one planned pitch",
    ask("2026-11-25", { planned: [["2026-11-25", 1, "lesson"]] }),
    "at most 84 by the book",
    ["The book's number for a day at age 12 is 85.", "1 already planned on this day comes off that."],
  ],
  [
    "two days in a row",
    ask("2026-11-25", {
      thrown: [
        ["2026-11-23", 10],
        ["2026-11-24", 10],
      ],
    }),
    "none by the book",
    ["Thrown on Mon 23 Nov and Tue 24 Nov: the book has no third day in a row.", "Free again Thu 26 Nov."],
  ],
  [
    "a day before two planned ones and after a thrown one",
    ask("2026-11-24", {
      thrown: [["2026-11-23", 10]],
      planned: [
        ["2026-11-25", 10],
        ["2026-11-26", 10],
      ],
    }),
    "none by the book",
    [
      "Thrown or planned on Mon 23 Nov, Wed 25 Nov and Thu 26 Nov: the book has no third day in a row.",
      "Free again Wed 25 Nov.",
    ],
  ],
  [
    "more than the daily number, and another rest that ends sooner",
    ask("2026-11-25", {
      thrown: [["2026-11-23", 86]],
      planned: [["2026-11-24", 36, "bullpen"]],
    }),
    "none by the book",
    [
      "86 on Mon 23 Nov, more than the book's number for a day, asks for four days of rest; free again Sat 28 Nov.",
      "36 planned on Tue 24 Nov asks for two days of rest; to Thu 26 Nov at least.",
      "Thrown or planned on Mon 23 Nov and Tue 24 Nov: the book has no third day in a row.",
    ],
  ],
  [
    "a log with a gap",
    ask("2026-11-26", { lastReportedOn: "2026-11-03" }),
    "at most 85 by the book",
    ["The book's number for a day at age 12 is 85.", "Nothing reported since 3 Nov: ask."],
  ],
  [
    "pain",
    ask("2026-11-26", { pain: { kind: "pain", ...pain }, thrown: [["2026-11-25", 51]] }),
    "no throwing: pain reported",
    ["Pain was reported on Fri 20 Nov: no throwing until the guardian clears it."],
  ],
  [
    "unusual fatigue of an athlete of age",
    ask("2026-11-26", { pain: { kind: "unusual_fatigue", ...pain }, bornOn: "2008-01-01" }),
    "no throwing: unusual fatigue reported",
    ["Unusual fatigue was reported on Fri 20 Nov: no throwing until the athlete clears it."],
  ],
  [
    "an age the book does not cover",
    ask("2026-11-26", { bornOn: "2020-01-01" }),
    "no published limit",
    ["The book has no published limit for age 6."],
  ],
];

describe("the answer in words", () => {
  it.each(CASES)("%s", (_name, question, words, why) => {
    const answer = pitchesAllowed(question);
    expect(limitInWords(answer)).toBe(words);
    expect(whyInSentences(answer)).toEqual(why);
  });

  it("never words a number as a permission", () => {
    for (const [, question] of CASES) {
      const answer = pitchesAllowed(question);
      const all = [limitInWords(answer), ...whyInSentences(answer)].join(" ");
      expect(all).not.toMatch(/\b(may|can|allowed|safe|ok)\b/i);
    }
  });

  it("spells out rest of any length a book may ask for", () => {
    const long = (restDays: number): ArmQuestion["books"] => {
      const ageBands = [
        {
          ageMin: 7,
          ageMax: 22,
          dailyMaxPitches: 50,
          restBands: [{ minPitches: 1, maxPitches: 50, restDays }],
        },
      ];
      const rules = rulesOf(USA_BASEBALL_2018, "pitch_count").map((rule) => ({ ...rule, ageBands }));
      return [{ ...USA_BASEBALL_2018, rules }];
    };
    const entries = [entry(["2026-11-25", 9])];
    const sentence = (restDays: number) =>
      whyInSentences(pitchesAllowed(ask("2026-11-26", { entries, books: long(restDays) })))[0];
    expect(sentence(10)).toBe("9 on Wed 25 Nov asks for ten days of rest; free again Sun 6 Dec.");
    expect(sentence(14)).toBe("9 on Wed 25 Nov asks for 14 days of rest; free again Thu 10 Dec.");
    const planned = [plan(["2026-11-25", 9])];
    const both = { ...ask("2026-11-26", { entries, books: long(1) }), planned };
    expect(whyInSentences(pitchesAllowed(both))).toEqual([
      "18 thrown or planned on Wed 25 Nov asks for one day of rest; free again Fri 27 Nov.",
    ]);
  });
});
