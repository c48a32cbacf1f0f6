import { describe, expect, it } from "vitest";
import { LITTLE_LEAGUE_BASEBALL } from "@/server/domain/throwing/books/little-league-baseball";
import { type ArmQuestion, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { ruleBookSchema, rulesOf } from "@/server/domain/throwing/rule-book";
import type { ThrowEntry } from "@/server/domain/throwing/throw-entry";
import { addDays } from "@/server/domain/time/calendar-day";
import published from "../../reference/little-league.json";
import { ask, entry, type Throws } from "./arm-question";

// Source of every figure here: Little League Baseball, Official Regulations and Playing Rules, Regulation VI. See
// test/reference/little-league.json. April 2026: Mon the 6th, Sat the 11th.

const BOOKS: ArmQuestion["books"] = [LITTLE_LEAGUE_BASEBALL];
const MONDAY = "2026-04-06";

/** Born so that the league age of 2026 is this one, and the age on the day is one less. */
const bornForLeagueAge = (age: number) => `${2026 - age}-08-20`;

const on = (day: string, entries: ThrowEntry[], age = 12, more: Partial<ArmQuestion> = {}) =>
  pitchesAllowed({ ...ask(day, { books: BOOKS, bornOn: bornForLeagueAge(age), entries }), ...more });

const game = (throws: Throws, more: Partial<ThrowEntry> = {}) => entry(throws, more);

const CASES = [7, 8, 9, 10, 11, 12, 13, 14, 15, 16].flatMap((age) => {
  const rows = age <= 14 ? published.rest14AndUnder : published.rest1516;
  const most = published.dailyMaxByLeagueAge.find(
    (row) => row.leagueAgeMin <= age && age <= row.leagueAgeMax,
  );
  const dailyMax = most?.dailyMax ?? 0;
  return rows
    .filter((row) => row.minPitches <= dailyMax)
    .flatMap(({ minPitches, maxPitches, restDays }) => [
      { age, dailyMax, pitches: minPitches, restDays },
      { age, dailyMax, pitches: Math.min(maxPitches, dailyMax), restDays },
    ]);
});

describe("Little League Baseball, Regulation VI", () => {
  it("ships as a book that holds together, and is looked at row by row", () => {
    expect(ruleBookSchema.parse(LITTLE_LEAGUE_BASEBALL)).toEqual(LITTLE_LEAGUE_BASEBALL);
    expect(CASES).toHaveLength(2 * (2 * 3 + 6 * 5 + 2 * 5));
  });

  it.each(CASES)(
    "league age $age: $pitches ask for $restDays full days",
    ({ age, dailyMax, pitches, restDays }) => {
      const entries = [game([MONDAY, pitches])];
      const freeDay = addDays(MONDAY, restDays + 1);
      for (let ahead = 1; ahead <= restDays; ahead += 1) {
        expect(on(addDays(MONDAY, ahead), entries, age)).toMatchObject({
          status: "resting",
          firstFreeDay: freeDay,
        });
      }
      expect(on(freeDay, entries, age)).toMatchObject({ status: "at_most", pitches: dailyMax });
      expect(on(MONDAY, entries, age).pitches).toBe(dailyMax - pitches);
    },
  );

  it.each(published.calendarDayExamples)("$pitches on $pitched: next on $next", ({ pitches, restDays }) => {
    const answer = on(addDays(MONDAY, 1), [game([MONDAY, pitches])]);
    expect(answer.firstFreeDay).toBe(addDays(MONDAY, restDays + 1));
  });

  it("keeps 70 on Monday off a suspended game that goes on on Thursday", () => {
    expect(on("2026-04-09", [game([MONDAY, 70])]).status).toBe("resting");
  });

  it.each([17, 18, 6])("has no published limit for league age %i", (age) => {
    expect(on(MONDAY, [], age).status).toBe("no_published_limit");
  });
});

describe("the last batter", () => {
  it.each(published.workedExamples)(
    "league age $leagueAge: $countAtStartOfLastBatter at its start, $total in all, asks for $restDays days",
    ({ leagueAge, countAtStartOfLastBatter, total, restDays }) => {
      const entries = [game([MONDAY, total], { pitchesAtLastBatter: countAtStartOfLastBatter })];
      const answer = on(addDays(MONDAY, 1), entries, leagueAge);
      expect(answer).toMatchObject({ firstFreeDay: addDays(MONDAY, restDays + 1) });
      expect(answer.reasons).toMatchObject([
        { pitches: total, countedPitches: countAtStartOfLastBatter, aboveDailyMax: false },
      ]);
    },
  );

  it("asks for three days after one more pitch to a new batter", () => {
    const entries = [game([MONDAY, 52], { pitchesAtLastBatter: 51 })];
    expect(on(addDays(MONDAY, 1), entries).firstFreeDay).toBe(addDays(MONDAY, 4));
  });

  it("goes by the total where nobody said it, and where the day held another outing", () => {
    expect(on(addDays(MONDAY, 1), [game([MONDAY, 51])]).firstFreeDay).toBe(addDays(MONDAY, 4));
    const both = [
      game([MONDAY, 40], { pitchesAtLastBatter: 35 }),
      game([MONDAY, 11, "bullpen"], { id: "b" }),
    ];
    expect(on(addDays(MONDAY, 1), both).firstFreeDay).toBe(addDays(MONDAY, 4));
  });

  it("names more than the number only where the batter was begun at it or after", () => {
    const begunAt = (pitchesAtLastBatter: number) =>
      on(addDays(MONDAY, 1), [game([MONDAY, 90], { pitchesAtLastBatter })]).reasons;
    expect(begunAt(84)).toMatchObject([{ aboveDailyMax: false }]);
    expect(begunAt(85)).toMatchObject([{ aboveDailyMax: true }]);
  });

  it("adds four pitches for an announced intentional walk", () => {
    const entries = [game([MONDAY, 34], { intentionalWalks: 1 })];
    expect(on(MONDAY, entries).pitches).toBe(85 - 38);
    expect(on(addDays(MONDAY, 1), entries).firstFreeDay).toBe(addDays(MONDAY, 3));
    expect(on(addDays(MONDAY, 1), [game([MONDAY, 34])]).firstFreeDay).toBe(addDays(MONDAY, 2));
  });
});

describe("catching and pitching on one day", () => {
  it("bars pitching after four innings caught, and not after three", () => {
    const caught = (inningsCaught: number) => on(MONDAY, [game([MONDAY, 0], { inningsCaught })]);
    expect(caught(4)).toMatchObject({
      ...{ status: "resting", pitches: 0, firstFreeDay: "2026-04-07" },
      reasons: [{ kind: "caught", innings: 4, entryIds: [MONDAY] }],
    });
    expect(caught(3)).toMatchObject({ status: "at_most", pitches: 85 });
  });

  it.each([
    ["40 pitches", 12, { pitches: 40 }, false],
    ["41 pitches", 12, { pitches: 41 }, true],
    ["44, the last batter begun at 39", 12, { pitches: 44, pitchesAtLastBatter: 39 }, false],
    ["44, the last batter begun at 40", 12, { pitches: 44, pitchesAtLastBatter: 40 }, true],
    ["20 after catching", 12, { pitches: 20, inningsCaught: 3 }, false],
    ["21 after catching", 12, { pitches: 21, inningsCaught: 1 }, true],
    [
      "23 after catching, the last batter begun at 19",
      12,
      { pitches: 23, inningsCaught: 1, pitchesAtLastBatter: 19 },
      false,
    ],
    ["30 after catching at 15", 15, { pitches: 30, inningsCaught: 2 }, false],
    ["31 after catching at 15", 15, { pitches: 31, inningsCaught: 2 }, true],
  ] as const)("%s at league age %i: %j may not catch any more: %s", (_name, age, said, isBarred) => {
    const { reasons } = on(MONDAY, [game([MONDAY, said.pitches], said)], age);
    expect(reasons.some(({ kind }) => kind === "no_catching")).toBe(isBarred);
  });

  it("takes no bullpen for a game that ends catching", () => {
    expect(on(MONDAY, [game([MONDAY, 60, "bullpen"])]).reasons.map(({ kind }) => kind)).not.toContain(
      "no_catching",
    );
  });
});

describe("one game a day, and three days in a row", () => {
  it("leaves no second game on a day, and says so where something else is asked for", () => {
    const entries = [game([MONDAY, 20])];
    expect(on(MONDAY, entries, 12, { kind: "game" })).toMatchObject({
      ...{ status: "at_most", pitches: 0, firstFreeDay: "2026-04-07" },
      reasons: [{ kind: "one_game" }, { kind: "already_today" }, { kind: "daily_max" }],
    });
    const bullpen = on(MONDAY, entries, 12, { kind: "bullpen" });
    expect(bullpen.pitches).toBe(65);
    expect(bullpen.reasons.at(-1)).toMatchObject({ kind: "one_game", entryIds: [MONDAY] });
    expect(on(MONDAY, [game([MONDAY, 20, "bullpen"])], 12, { kind: "game" }).pitches).toBe(65);
  });

  it("has no third day in a row, however few the pitches", () => {
    const entries = [game([MONDAY, 5]), game(["2026-04-07", 5])];
    expect(on("2026-04-08", entries)).toMatchObject({ status: "resting", firstFreeDay: "2026-04-09" });
  });
});

describe("what the sources do not agree on", () => {
  it("is said in the book's notes", () => {
    expect(LITTLE_LEAGUE_BASEBALL.notes.join(" ")).toMatch(/40 or more.*41 or more/);
    expect(rulesOf(LITTLE_LEAGUE_BASEBALL, "catching")[0]?.pitchesThatBarCatching).toBe(41);
  });
});
