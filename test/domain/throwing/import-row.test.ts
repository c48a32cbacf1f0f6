import { describe, expect, it } from "vitest";
import { dayWritten, IMPORT_COLUMNS, type ImportColumn, readRow } from "@/server/domain/throwing/import-row";

const BOUNDS = {
  bornOn: "2014-05-10",
  today: "2026-11-25",
  plausibleMaxPitches: 400,
  dayOrder: "month_first",
  teams: [{ id: "tea_own", name: "River Nine" }],
} as const;
const EMPTY = Object.fromEntries(IMPORT_COLUMNS.map((column) => [column, ""])) as Record<
  ImportColumn,
  string
>;
const read = (cells: Partial<Record<ImportColumn, string>>) =>
  readRow({ ...EMPTY, Day: "2026-04-18", Kind: "Game", Pitches: "45", ...cells }, BOUNDS);
const problems = (cells: Partial<Record<ImportColumn, string>>) => {
  const reading = read(cells);
  return reading.ok ? [] : reading.problems;
};

describe("a row of past throwing", () => {
  it("needs a day, a kind and a number", () => {
    expect(read({})).toEqual({
      ok: true,
      row: { thrownOn: "2026-04-18", kind: "game", pitches: 45, game: null, note: "" },
    });
  });

  it("takes all that a game says", () => {
    const said = {
      "Innings pitched": "3 2/3",
      "Innings caught": "1",
      "Pitches before last batter": "41",
      "Intentional walks": "1",
      Team: "river nine",
      Against: " Lakeside ",
      Note: " windy ",
    };
    expect(read(said)).toMatchObject({
      row: {
        game: {
          ...{ outs: 11, inningsCaught: 1, pitchesAtLastBatter: 41, intentionalWalks: 1 },
          ...{ teamId: "tea_own", opponent: "Lakeside" },
        },
        note: "windy",
      },
    });
  });

  it.each(["game", "GAME", " Live at-bats ", "live_at_bats", "Long toss", "weighted  balls"])(
    "reads the kind %j",
    (kind) => {
      expect(read({ Kind: kind }).ok).toBe(true);
    },
  );

  it.each<[Partial<Record<ImportColumn, string>>, string | RegExp]>([
    [{ Day: "yesterday" }, 'Day "yesterday" is no day: write it as 2026-04-18.'],
    [{ Day: "2026-02-30" }, 'Day "2026-02-30" is no day: write it as 2026-04-18.'],
    [{ Day: "" }, 'Day "" is no day: write it as 2026-04-18.'],
    [{ Day: "2026-11-26" }, "The day has not come yet: the log holds what was thrown."],
    [{ Day: "2014-05-09" }, /^The day is before the athlete was born/],
    [{ Kind: "cricket" }, /^Kind "cricket" is not one of: Game, Bullpen, Lesson/],
    [{ Pitches: "" }, 'Pitches "" is not a whole number.'],
    [{ Pitches: "45.5" }, 'Pitches "45.5" is not a whole number.'],
    [{ Pitches: "-1" }, "Pitches cannot be below 0."],
    [{ Pitches: "10000" }, "More than 400 pitches in one entry looks like a slip: check the number."],
    [{ "Innings pitched": "2.5" }, 'Innings pitched "2.5" is not whole innings and thirds, as 2 or 2 1/3.'],
    [{ "Innings caught": "x" }, 'Innings caught "x" is not a whole number.'],
    [{ "Pitches before last batter": "46" }, /^The last batter cannot/],
    [{ Team: "Hill Club" }, 'Team "Hill Club" is not a team of this athlete: add it first, or leave it out.'],
    [{ Kind: "Bullpen", "Innings pitched": "2" }, "Innings, walks and a team belong to a game."],
    [{ Kind: "Bullpen", Against: "Lakeside" }, "Innings, walks and a team belong to a game."],
    [{ Note: "=HYPERLINK(1)" }, 'Note starts like a formula: take "=" off its front.'],
    [{ Against: " @SUM(1)" }, 'Against starts like a formula: take "@" off its front.'],
    [{ Note: "x".repeat(1001) }, "Note fits in 1000 characters."],
    [{ Against: "x".repeat(81) }, "Against fits in 80 characters."],
  ])("with %j says what is wrong", (cells, sentence) => {
    const told = problems(cells);
    expect(told).toHaveLength(1);
    if (typeof sentence === "string") expect(told[0]).toBe(sentence);
    else expect(told[0]).toMatch(sentence);
  });

  it("says everything that is wrong at once, and shows long texts in short", () => {
    expect(problems({ Day: "x".repeat(60), Kind: "?", Pitches: "many" })).toEqual([
      `Day "${"x".repeat(40)}…" is no day: write it as 2026-04-18.`,
      expect.stringContaining('Kind "?"'),
      'Pitches "many" is not a whole number.',
    ]);
  });
});

describe("a day as it is written", () => {
  it.each([
    ["2026-04-18", "month_first", "2026-04-18"],
    ["2026-04-18", "day_first", "2026-04-18"],
    ["4/18/2026", "month_first", "2026-04-18"],
    ["18/4/2026", "day_first", "2026-04-18"],
    ["03/04/2026", "month_first", "2026-03-04"],
    ["03/04/2026", "day_first", "2026-04-03"],
    ["4/18/2026", "day_first", null],
    ["4/18/26", "month_first", null],
    ["2/29/2027", "month_first", null],
    ["", "month_first", null],
  ] as const)("%j, %s, is %j", (text, order, day) => {
    expect(dayWritten(text, order)).toBe(day);
  });
});
