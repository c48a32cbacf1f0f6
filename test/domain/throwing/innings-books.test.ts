import { describe, expect, it } from "vitest";
import { TOURNAMENT_INNINGS } from "@/server/domain/throwing/books/tournament-innings";
import { outsOfInnings } from "@/server/domain/throwing/innings";
import { type ArmQuestion, firstDayWithRoom, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { type RuleBook, ruleBookSchema } from "@/server/domain/throwing/rule-book";
import type { ThrowEntry } from "@/server/domain/throwing/throw-entry";
import { addDays } from "@/server/domain/time/calendar-day";
import littleLeague from "../../reference/little-league.json";
import published from "../../reference/other-pitch-rules.json";
import { ask, entry } from "./arm-question";

// Source: USSSA Baseball, pitching limitations, and the pitching FAQ of November 2016. See
// test/reference/other-pitch-rules.json.

const FIRST = "2026-06-06";

/** A game of each day, by its innings; nothing on a day with "0". */
function games(...innings: string[]): ThrowEntry[] {
  return innings.flatMap((typed, index) => {
    const outs = outsOfInnings(typed) ?? 0;
    const day = addDays(FIRST, index);
    return outs === 0 ? [] : [entry([day, 5 * outs], { id: `game ${index + 1}`, outs })];
  });
}

const BORN = { young: "2015-01-01", old: "2012-01-01" };

const onDay = (place: number, entries: ThrowEntry[], more: Partial<ArmQuestion> = {}) =>
  pitchesAllowed({
    ...ask(addDays(FIRST, place - 1), { books: [TOURNAMENT_INNINGS], bornOn: BORN.young, entries }),
    ...more,
  });

describe("tournament innings", () => {
  it("ships as a book that holds together, with the published numbers", () => {
    expect(ruleBookSchema.parse(TOURNAMENT_INNINGS)).toEqual(TOURNAMENT_INNINGS);
    const { oneDayMax, threeDayMax, toPitchNextDayMaxInnings } = published.usssaBaseball;
    expect(TOURNAMENT_INNINGS.rules[0]).toMatchObject({
      ageBands: [{ outsPerDay: oneDayMax["7U-12U"] * 3 }, { outsPerDay: oneDayMax["13U-14U"] * 3 }],
      outsWithoutRest: toPitchNextDayMaxInnings * 3,
      rolling: { days: 3, outs: threeDayMax * 3 },
    });
  });

  it.each(published.usssaBaseball.examples)("$d1, $d2, $d3, $d4: $d3Max, $d4Max, $d5Max", (example) => {
    const { d1, d2 = "0", d3, d4, age } = example;
    const bornOn = age ? BORN.old : BORN.young;
    const most = (place: number, ...innings: string[]) => onDay(place, games(...innings), { bornOn }).outs;
    if (example.d3Max) expect(most(3, d1, d2)).toBe(outsOfInnings(example.d3Max));
    if (example.d4Max) {
      const fourth = onDay(4, games(d1, d2, d3 ?? "0"), { bornOn });
      expect(fourth).toMatchObject({ status: "resting", pitches: 0, outs: 0 });
    }
    if (example.d5Max) expect(most(5, d1, d2, d3 ?? "0", d4 ?? "0")).toBe(outsOfInnings(example.d5Max));
  });

  it("says innings where there is no number of pitches", () => {
    expect(onDay(1, [])).toMatchObject({
      status: "at_most",
      pitches: null,
      outs: 18,
      boundBy: "tournament-innings",
    });
    expect(onDay(1, [], { bornOn: BORN.old }).outs).toBe(21);
    expect(onDay(1, [], { bornOn: "2000-01-01" }).status).toBe("no_published_limit");
  });

  it("leaves the next day free after more than three innings, and not after three", () => {
    expect(onDay(2, games("3 1/3"))).toMatchObject({
      ...{ status: "resting", firstFreeDay: addDays(FIRST, 2) },
      reasons: [{ kind: "innings_rest", outs: 10, days: 1, entryIds: ["game 1"] }],
    });
    expect(onDay(2, games("3"))).toMatchObject({ status: "at_most", outs: 15 });
  });

  it("looks ahead: an outing tomorrow leaves three innings today, and its days their share of eight", () => {
    const planned = [
      { id: "p", plannedOn: addDays(FIRST, 1), kind: "game" as const, pitches: 40, teamId: null },
    ];
    const today = onDay(1, [], { planned });
    expect(today).toMatchObject({ outs: 9, pitches: null });
    expect(today.reasons[0]).toMatchObject({ kind: "outs_ahead", totalOuts: 9, plannedIds: ["p"] });
    const later = games("0", "0", "6");
    expect(onDay(1, later).outs).toBe(6);
    expect(onDay(1, later).reasons[0]).toMatchObject({ kind: "rolling_outs", got: 18, most: 24 });
  });

  it("has no room on a day whose innings are used up", () => {
    const answer = onDay(1, games("6"));
    expect(answer).toMatchObject({ status: "at_most", pitches: 0, outs: 0, firstFreeDay: addDays(FIRST, 2) });
    expect(answer.reasons.map(({ kind }) => kind)).toEqual(["daily_outs", "outs_today"]);
  });

  it("names the games whose innings nobody said", () => {
    const answer = onDay(2, [
      entry([FIRST, 30], { id: "unsaid" }),
      entry([FIRST, 20, "bullpen"], { id: "pen" }),
    ]);
    expect(answer.reasons.at(-1)).toEqual({ kind: "outs_not_said", entryIds: ["unsaid"], plannedIds: [] });
  });

  it("finds the first day by it, for any number of pitches", () => {
    expect(firstDayWithRoom(ask(FIRST, { books: [TOURNAMENT_INNINGS], entries: games("6") }), 200)).toBe(
      addDays(FIRST, 2),
    );
  });
});

describe("softball by innings, as engine data only", () => {
  // Source: Little League Softball, regular season. See test/reference/little-league.json.
  const { minorMajor } = littleLeague.softball;
  const MAJOR: RuleBook = {
    ...{ id: "major", name: "Major", source: littleLeague.softball.name, standing: "own", sampleYear: null },
    ageBasis: { kind: "league_age", cutOff: "12-31", yearOffset: -1 },
    rules: [
      {
        ...{ kind: "innings", level: "limit", effectiveFrom: "2000-01-01", effectiveUntil: null },
        source: littleLeague.softball.name,
        ageBands: [{ ageMin: 7, ageMax: 12, outsPerDay: minorMajor.maxInningsPerDay * 3 }],
        ...{ outsWithoutRest: 6 * 3, rolling: null, counted: "innings_started" },
      },
    ],
    ...{ advice: [], notes: [] },
  };
  const SUNDAY = "2026-06-07";
  const mondayAfter = (innings: number) =>
    pitchesAllowed(
      ask("2026-06-08", {
        ...{ bornOn: "2013-06-01", books: [MAJOR] },
        entries: [entry([SUNDAY, 60], { outs: innings * 3 })],
      }),
    );

  it("holds together", () => {
    expect(ruleBookSchema.parse(MAJOR)).toEqual(MAJOR);
  });

  it("leaves Monday's major game none after seven innings on Sunday, and after six all twelve", () => {
    expect(mondayAfter(7).status).toBe("resting");
    expect(mondayAfter(6)).toMatchObject({ status: "at_most", outs: 36 });
  });

  it("counts an inning in which one pitch was thrown", () => {
    const entries = [entry([SUNDAY, 60], { outs: 18 }), entry([SUNDAY, 1], { id: "relief", outs: 0 })];
    expect(pitchesAllowed(ask("2026-06-08", { bornOn: "2013-06-01", books: [MAJOR], entries })).status).toBe(
      "resting",
    );
  });

  it("has no limit where the book of the game being played has none", () => {
    expect(pitchesAllowed(ask("2026-06-08", { bornOn: "2011-06-01", books: [MAJOR] })).status).toBe(
      "no_published_limit",
    );
  });
});
