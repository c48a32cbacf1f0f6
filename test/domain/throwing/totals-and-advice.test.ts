import { describe, expect, it } from "vitest";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { VOLUME_CAPS_2006 } from "@/server/domain/throwing/books/volume-caps-2006";
import { type ArmQuestion, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import type { Rule } from "@/server/domain/throwing/rule";
import { type RuleBook, ruleBookSchema } from "@/server/domain/throwing/rule-book";
import type { ThrowEntry } from "@/server/domain/throwing/throw-entry";
import { adviceInSentences } from "@/server/domain/throwing/why";
import { addDays, addMonths } from "@/server/domain/time/calendar-day";
import published from "../../reference/other-pitch-rules.json";
import guideline from "../../reference/pitch-smart.json";
import { ask, entry } from "./arm-question";

const DAY = "2026-11-25";

/** The guideline with a total of pitches as a limit. */
function capped(over: { days: number } | { months: number }, most: number): ArmQuestion["books"] {
  const rule: Rule = {
    ...{ kind: "total", level: "limit", effectiveFrom: "2000-01-01", effectiveUntil: null, source: "own" },
    ...{ unit: "pitches", over, ageBands: [{ ageMin: 7, ageMax: 22, most }] },
  };
  const book: RuleBook = { ...USA_BASEBALL_2018, id: "capped", rules: [...USA_BASEBALL_2018.rules, rule] };
  return [ruleBookSchema.parse(book)];
}

const game = (day: string, pitches: number, more: Partial<ThrowEntry> = {}) => entry([day, pitches], more);

describe("a total that limits", () => {
  it("leaves what is left of the span that ends on the day", () => {
    const entries = [game(addDays(DAY, -6), 50), game(addDays(DAY, -7), 50)];
    const answer = pitchesAllowed(ask(DAY, { books: capped({ days: 7 }, 100), entries }));
    expect(answer.pitches).toBe(50);
    expect(answer.reasons[0]).toMatchObject({
      ...{ kind: "total", unit: "pitches", most: 100, got: 50, lastDay: DAY },
      entryIds: [addDays(DAY, -6)],
    });
  });

  it("keeps for a planned outing what it will need of its own span", () => {
    const planned = [
      { id: "p", plannedOn: addDays(DAY, 6), kind: "game" as const, pitches: 70, teamId: null },
    ];
    expect(pitchesAllowed({ ...ask(DAY, { books: capped({ days: 7 }, 100) }), planned }).pitches).toBe(30);
    expect(pitchesAllowed({ ...ask(DAY, { books: capped({ days: 6 }, 100) }), planned }).pitches).toBe(85);
  });

  it("counts months by the calendar", () => {
    const books = capped({ months: 1 }, 60);
    const asked = (day: string, thrownOn: string) =>
      pitchesAllowed(ask(day, { books, entries: [game(thrownOn, 60)] })).pitches;
    expect(asked("2026-11-24", "2026-10-25")).toBe(0);
    expect(asked("2026-11-25", "2026-10-25")).toBe(60);
    expect(asked("2027-03-30", "2027-02-28")).toBe(60);
    expect(asked("2027-03-27", "2027-02-28")).toBe(0);
  });

  it("names the first day on which something is left again", () => {
    const entries = [game(DAY, 60)];
    const answer = pitchesAllowed(ask(addDays(DAY, 4), { books: capped({ months: 1 }, 60), entries }));
    expect(answer).toMatchObject({ pitches: 0, firstFreeDay: addMonths(DAY, 1) });
  });
});

// Source: USA Baseball, numbers of pitches for youth pitchers by week, season and year, 2006. See
// test/reference/other-pitch-rules.json.
describe("the numbers of 2006", () => {
  it.each(published.usaBaseball2006.weeklySeasonYear)("for $ages: $week a week and $year a year", (row) => {
    const [ageMin = 0, ageMax = 0] = row.ages.split("-").map(Number);
    for (const [rule, most] of [
      [VOLUME_CAPS_2006.rules[0], row.week],
      [VOLUME_CAPS_2006.rules[1], row.year],
    ] as const) {
      expect(rule).toMatchObject({ ageBands: expect.arrayContaining([{ ageMin, ageMax, most }]) });
    }
    expect(VOLUME_CAPS_2006.advice[0]?.words).toContain(row.season.toLocaleString("en-GB"));
  });

  it("warn beside another book's number, and change none", () => {
    const books: ArmQuestion["books"] = [USA_BASEBALL_2018, VOLUME_CAPS_2006];
    const answer = pitchesAllowed(ask(DAY, { books, entries: [game(addDays(DAY, -6), 80)] }));
    expect(answer.pitches).toBe(85);
    expect(answer.warnings).toMatchObject([
      { bookId: "volume-caps-2006", reason: { kind: "total", most: 100, got: 80, over: { days: 7 } } },
    ]);
    expect(adviceInSentences(answer)).toEqual([
      "Advice, not a limit: at most 100 pitches over seven days by the book; those to Wed 25 Nov have 80.",
    ]);
  });

  it("say nothing alone but their advice: no published limit", () => {
    const answer = pitchesAllowed(
      ask(DAY, { books: [VOLUME_CAPS_2006], entries: [game(addDays(DAY, -6), 100)] }),
    );
    expect(answer).toMatchObject({ status: "no_published_limit", pitches: null });
    expect(answer.warnings).toMatchObject([
      { reason: { kind: "total", got: 100 } },
      { reason: { kind: "total" } },
    ]);
  });
});

// Source: MLB and USA Baseball, Pitch Smart pitching guidelines. See test/reference/pitch-smart.json.
describe("the advice of the guideline", () => {
  const kinds = (question: ArmQuestion) => pitchesAllowed(question).warnings.map(({ reason }) => reason.kind);

  it("has one game a day, as advice", () => {
    const entries = [game(DAY, 20)];
    expect(pitchesAllowed(ask(DAY, { entries, kind: "game" })).pitches).toBe(65);
    expect(kinds(ask(DAY, { entries, kind: "game" }))).toEqual(["one_game"]);
    expect(kinds(ask(DAY, { entries: [entry([DAY, 20, "bullpen"])], kind: "game" }))).toEqual([]);
  });

  it.each([
    [8, 60],
    [12, 80],
    [14, 100],
  ])("at %i warns once %i innings of twelve months are reached", (age, innings) => {
    expect(guideline.advice.map((row) => row.inningsInTwelveMonthsMax)).toContain(innings);
    const of = (outs: number) =>
      ask(DAY, {
        bornOn: `${2026 - age}-01-01`,
        entries: [game("2025-11-26", 0, { outs }), game("2025-11-25", 0, { outs: 9, id: "before" })],
      });
    expect(kinds(of(innings * 3 - 1))).toEqual([]);
    expect(kinds(of(innings * 3))).toEqual(["total"]);
  });

  it("says months off only over twelve whole months of record", () => {
    const monthly = (months: number[]) =>
      months.map((ago) => game(addDays(addMonths("2026-11-10", -ago), 0), 20, { id: `${ago}` }));
    const all = [13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1];
    const short = pitchesAllowed(ask(DAY, { entries: monthly(all) }));
    expect(short.warnings).toMatchObject([
      {
        reason: {
          kind: "months_off",
          of: "throwing",
          months: 4,
          runMonths: 2,
          had: { months: 0, longestRun: 0 },
        },
      },
    ]);
    expect(adviceInSentences(short)).toEqual([
      "Advice, not a limit: the book has four months of the year without throwing, two of them in one stretch; counted over the last twelve whole months: 0, the longest stretch without any throwing 0.",
    ]);
    expect(kinds(ask(DAY, { entries: monthly(all.filter((ago) => ![2, 3, 7, 8].includes(ago))) }))).toEqual(
      [],
    );
    expect(kinds(ask(DAY, { entries: monthly(all.slice(2)) }))).toEqual([]);
  });

  it("from 15 has months without competition, and one stretch without any throwing", () => {
    const all = [13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1];
    const entries = all.map((ago) =>
      entry([addMonths("2026-11-10", -ago), 30, [2, 3, 7, 8].includes(ago) ? "long_toss" : "game"], {
        id: `${ago}`,
      }),
    );
    const answer = pitchesAllowed(ask(DAY, { entries, bornOn: "2010-01-01" }));
    expect(answer.warnings).toMatchObject([
      { reason: { of: "competitive_pitching", months: 4, runMonths: 2, had: { months: 4, longestRun: 0 } } },
    ]);
  });
});
