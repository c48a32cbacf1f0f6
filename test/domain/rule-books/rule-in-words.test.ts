import { describe, expect, it } from "vitest";
import {
  ageBasisInWords,
  agesCovered,
  agesInWords,
  countedInnings,
  ruleInSentences,
} from "@/server/domain/rule-books/rule-in-words";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import type { Rule } from "@/server/domain/throwing/rule";

const HEAD = {
  level: "limit",
  effectiveFrom: "2026-01-01",
  effectiveUntil: null,
  source: "A league",
} as const;
const AGES = { ageMin: 7, ageMax: 12 };

describe("a book in words", () => {
  it.each([
    [7, 8, "7 to 8"],
    [12, 12, "12"],
    [19, 120, "19 and over"],
    [0, 120, "all"],
  ])("says the ages %i to %i", (ageMin, ageMax, words) => {
    expect(agesInWords(ageMin, ageMax)).toBe(words);
  });

  it("says from which age to which it counts anything", () => {
    expect(agesCovered(USA_BASEBALL_2018)).toBe("7 to 22");
    expect(agesCovered({ rules: [{ kind: "one_game_a_day", ...HEAD }] })).toBe("none");
  });

  it.each([
    [1, "1/3 inning"],
    [3, "1 inning"],
    [7, "2 1/3 innings"],
    [18, "6 innings"],
  ])("says %i outs as innings", (outs, words) => {
    expect(countedInnings(outs)).toBe(words);
  });

  it.each([
    [{ kind: "on_day" }, "Age is the completed years on the day."],
    [
      { kind: "league_age", cutOff: "08-31", yearOffset: 0 },
      "Age is the league age: the completed years on 31 August of the same year.",
    ],
    [
      { kind: "league_age", cutOff: "12-31", yearOffset: -1 },
      "Age is the league age: the completed years on 31 December of the year before.",
    ],
  ] as const)("says which age it goes by: %j", (basis, words) => {
    expect(ageBasisInWords(basis)).toBe(words);
  });
});

describe("a rule in sentences", () => {
  const RULES: [string, Rule, string[]][] = [
    [
      "days in a row",
      { kind: "days_in_a_row", ...HEAD, maxDays: 2 },
      ["At most 2 days in a row with counted pitches."],
    ],
    ["one game", { kind: "one_game_a_day", ...HEAD }, ["No pitching in more than one game on a day."]],
    [
      "catching",
      {
        ...{ kind: "catching", ...HEAD, inningsThatBarPitching: 4, pitchesThatBarCatching: 41 },
        afterCatching: [{ ...AGES, pitchesThatBarCatching: 21 }],
      },
      [
        "Whoever caught in 4 innings or more does not pitch on that day.",
        "Whoever threw 41 pitches or more does not catch on the rest of that day.",
        "After catching and then pitching, this many pitches end catching for the day:",
      ],
    ],
    [
      "innings",
      {
        ...{ kind: "innings", ...HEAD, ageBands: [{ ...AGES, outsPerDay: 18 }], outsWithoutRest: 9 },
        ...{ rolling: { days: 3, outs: 24, restWhenFull: true }, counted: "outs" },
      },
      [
        "More than 3 innings in a day asks for one day of rest.",
        "At most 8 innings over any 3 days in a row, and once that is reached the next day is for rest.",
        "Counted by outs: a third of an inning for each.",
      ],
    ],
    [
      "totals",
      { kind: "total", ...HEAD, unit: "pitches", over: { months: 12 }, ageBands: [{ ...AGES, most: 3000 }] },
      ["Counted over any 12 months, all teams together."],
    ],
    [
      "months off",
      {
        ...{ kind: "months_off", ...HEAD, level: "advice", of: "throwing" },
        ageBands: [{ ...AGES, months: 4, runMonths: 2 }],
      },
      ["Months of the year without any overhead throwing."],
    ],
  ];

  it.each(RULES)("%s", (_kind, rule, sentences) => {
    expect(ruleInSentences(rule)).toEqual(sentences);
  });

  it("pitches: how rest is counted, finishing a batter, intentional walks", () => {
    const [rule] = USA_BASEBALL_2018.rules.filter((each) => each.kind === "pitch_count");
    if (rule?.kind !== "pitch_count") throw new Error("The guideline counts pitches.");
    const league: Rule = {
      ...rule,
      restCountsFrom: "start_of_last_batter",
      finishesBatter: true,
      intentionalWalkPitches: 4,
    };
    expect(ruleInSentences(league)).toEqual([
      "Rest is counted in full calendar days.",
      "Rest goes by the count at the start of the last batter, where it was written down.",
      "A batter may be finished once the number is reached.",
      "An intentional walk adds 4 pitches.",
    ]);
  });
});
