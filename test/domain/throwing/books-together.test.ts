import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LITTLE_LEAGUE_BASEBALL } from "@/server/domain/throwing/books/little-league-baseball";
import { MINNESOTA_2017 } from "@/server/domain/throwing/books/minnesota-2017";
import { NORTH_DAKOTA_2017 } from "@/server/domain/throwing/books/north-dakota-2017";
import { TOURNAMENT_INNINGS } from "@/server/domain/throwing/books/tournament-innings";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { VOLUME_CAPS_2006 } from "@/server/domain/throwing/books/volume-caps-2006";
import { type ArmQuestion, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { ruleBookSchema, rulesOf } from "@/server/domain/throwing/rule-book";
import { SHIPPED_BOOKS } from "@/server/domain/throwing/shipped-books";
import { addDays } from "@/server/domain/time/calendar-day";
import published from "../../reference/other-pitch-rules.json";
import { ask, entry, type Throws } from "./arm-question";
import { anyArm } from "./random-arms";

const BOTH: ArmQuestion["books"] = [USA_BASEBALL_2018, LITTLE_LEAGUE_BASEBALL];

describe("the books that ship", () => {
  it.each(SHIPPED_BOOKS.map((book) => [book.name, book] as const))("%s holds together", (_name, book) => {
    expect(ruleBookSchema.parse(book)).toEqual(book);
    expect(book.notes.length).toBeGreaterThan(0);
  });

  it("are told apart: published, dated samples with their year, opinion", () => {
    expect(SHIPPED_BOOKS.map(({ id, standing, sampleYear }) => [id, standing, sampleYear])).toEqual([
      ["usa-baseball-2018", "published", null],
      ["little-league-baseball", "published", null],
      ["tournament-innings", "published", null],
      ["minnesota-high-school-2017", "sample", 2017],
      ["north-dakota-high-school-2017", "sample", 2017],
      ["volume-caps-2006", "opinion", null],
    ]);
    expect(VOLUME_CAPS_2006.rules.every((rule) => rule.level === "advice")).toBe(true);
  });
});

// Source: reports of the two associations' rules for 2017, under NFHS rule 6-1-6. See
// test/reference/other-pitch-rules.json.
describe.each([
  ["MN varsity (2017)", MINNESOTA_2017],
  ["ND (2017)", NORTH_DAKOTA_2017],
] as const)("the sample of %s", (state, book) => {
  const sample = published.stateSamples.find((row) => row.state === state);
  const rows = (sample?.bands ?? []).map(([from = 0, to = 0, rest = 0]) => ({ from, to, rest }));
  const thrown = (pitches: number): Throws[] => [["2026-04-06", pitches]];
  const asked = (day: string, pitches: number) =>
    pitchesAllowed(ask(day, { books: [book], bornOn: "2009-01-01", thrown: thrown(pitches) }));

  it.each(rows)("asks after $from to $to for $rest days", ({ from, to, rest }) => {
    for (const pitches of [Math.max(1, from), to]) {
      if (rest > 0) expect(asked("2026-04-07", pitches).firstFreeDay).toBe(addDays("2026-04-06", rest + 1));
      else
        expect(asked("2026-04-07", pitches)).toMatchObject({ status: "at_most", pitches: sample?.dailyMax });
    }
  });

  it("is looked at whole", () => {
    expect(rulesOf(book, "pitch_count")[0]?.ageBands[0]?.restBands).toHaveLength(rows.length);
  });
});

describe("where the samples differ from Little League", () => {
  const on = (book: (typeof SHIPPED_BOOKS)[number], more: Pick<ArmQuestion, "kind"> = {}) =>
    pitchesAllowed(
      ask("2026-04-06", {
        ...{ books: [book], bornOn: "2011-01-01", kind: "game", ...more },
        entries: [entry(["2026-04-06", 20], { intentionalWalks: 2 })],
      }),
    );

  it("North Dakota counts no intentional walk and allows a second game; Little League counts four and allows none", () => {
    expect(on(NORTH_DAKOTA_2017).pitches).toBe(100);
    expect(on(LITTLE_LEAGUE_BASEBALL).pitches).toBe(0);
    expect(on(LITTLE_LEAGUE_BASEBALL, { kind: "lesson" }).pitches).toBe(95 - 28);
  });

  it("Minnesota rests a day after two straight days", () => {
    const thrown: Throws[] = [
      ["2026-04-06", 5],
      ["2026-04-07", 5],
    ];
    const books: ArmQuestion["books"] = [MINNESOTA_2017];
    const answer = pitchesAllowed(ask("2026-04-08", { books, bornOn: "2009-01-01", thrown }));
    expect(answer.firstFreeDay).toBe("2026-04-09");
  });
});

describe("several books for one arm", () => {
  it("answer with the stricter, and say which", () => {
    const entries = [entry(["2026-04-06", 51], { pitchesAtLastBatter: 45 })];
    const answer = pitchesAllowed(ask("2026-04-08", { books: BOTH, entries }));
    // By the start of the last batter Thursday is free; by the total, Friday.
    expect(answer).toMatchObject({
      ...{ status: "resting", pitches: 0, firstFreeDay: "2026-04-10" },
      ...{ boundBy: "usa-baseball-2018", boundByName: "MLB and USA Baseball guideline, since 2018" },
    });
    const walks = [entry(["2026-04-08", 30], { intentionalWalks: 3 })];
    expect(pitchesAllowed(ask("2026-04-08", { books: BOTH, entries: walks }))).toMatchObject({
      ...{ pitches: 43, boundBy: "little-league-baseball" },
    });
  });

  it("name no book where there is one", () => {
    expect(pitchesAllowed(ask("2026-04-08"))).toMatchObject({
      boundBy: "usa-baseball-2018",
      boundByName: null,
    });
  });

  it("answer with pitches of one and innings of another, and leave neither where either is used up", () => {
    const books: ArmQuestion["books"] = [USA_BASEBALL_2018, TOURNAMENT_INNINGS];
    expect(pitchesAllowed(ask("2026-04-08", { books }))).toMatchObject({ pitches: 85, outs: 18 });
    const entries = [entry(["2026-04-08", 40], { outs: 18 })];
    const answer = pitchesAllowed(ask("2026-04-08", { books, entries }));
    expect(answer).toMatchObject({ pitches: 0, outs: 0, boundBy: "tournament-innings" });
    const rested = [entry(["2026-04-07", 51], { outs: 3 })];
    expect(pitchesAllowed(ask("2026-04-08", { books, entries: rested }))).toMatchObject({
      pitches: 0,
      outs: 0,
    });
  });

  it("let a silent book say nothing, and are silent together", () => {
    const books: ArmQuestion["books"] = [LITTLE_LEAGUE_BASEBALL, USA_BASEBALL_2018];
    const older = ask("2026-04-08", { books, bornOn: "2006-01-01" });
    expect(pitchesAllowed(older)).toMatchObject({ pitches: 120, boundBy: "usa-baseball-2018" });
    expect(pitchesAllowed({ ...older, bornOn: "1990-01-01" })).toMatchObject({
      ...{ status: "no_published_limit", pitches: null, boundBy: null },
      reasons: [{ kind: "no_published_limit", ageYears: 36 }],
    });
  });

  it("never allow more than any of them alone, nor name a day free that one of them holds", () => {
    const least = (values: (number | null)[]) =>
      Math.min(...values.map((each) => each ?? Number.POSITIVE_INFINITY));
    fc.assert(
      fc.property(anyArm, (question) => {
        const together = pitchesAllowed(question);
        const alone = question.books.map((book) => pitchesAllowed({ ...question, books: [book] }));
        const { firstFreeDay } = together;
        expect(least([together.pitches])).toBe(least(alone.map(({ pitches }) => pitches)));
        expect(least([together.outs])).toBeLessThanOrEqual(least(alone.map(({ outs }) => outs)));
        if (!firstFreeDay) return;
        for (const book of question.books) {
          expect(pitchesAllowed({ ...question, books: [book], day: firstFreeDay }).pitches).not.toBe(0);
        }
      }),
      { numRuns: 1500 },
    );
  });
});

describe("an override of a limit", () => {
  const thrown: Throws[] = [["2026-04-06", 70]];
  const overrides = [{ id: "lov", day: "2026-04-07", pitches: 30 }];

  it("lifts the day to its total, less what is on it, and says so first", () => {
    const answer = pitchesAllowed(ask("2026-04-07", { thrown, overrides }));
    expect(answer).toMatchObject({ status: "at_most", pitches: 30, firstFreeDay: null });
    expect(answer.reasons.map(({ kind }) => kind)).toEqual(["override", "rest_owed"]);
    const begun: Throws[] = [...thrown, ["2026-04-07", 12]];
    expect(pitchesAllowed(ask("2026-04-07", { thrown: begun, overrides })).pitches).toBe(18);
    expect(pitchesAllowed(ask("2026-04-08", { thrown, overrides })).pitches).toBe(0);
  });

  it("never lowers a number, and the last one of a day stands", () => {
    expect(pitchesAllowed(ask("2026-04-07", { overrides })).pitches).toBe(85);
    const later = [...overrides, { id: "later", day: "2026-04-07", pitches: 40 }];
    expect(pitchesAllowed(ask("2026-04-07", { thrown, overrides: later })).pitches).toBe(40);
  });

  it("never lifts pain, and lifts nothing where there is no limit", () => {
    const pain = {
      kind: "pain" as const,
      firstFeltOn: "2026-04-06",
      lastFeltOn: "2026-04-06",
      reportIds: ["p"],
    };
    expect(pitchesAllowed(ask("2026-04-07", { thrown, overrides, pain }))).toMatchObject({
      status: "pain",
      pitches: 0,
    });
    const old = ask("2026-04-07", { thrown, overrides, bornOn: "1990-01-01" });
    expect(pitchesAllowed(old).status).toBe("no_published_limit");
  });

  it("is the first day with room while nothing else is", () => {
    expect(pitchesAllowed(ask("2026-04-06", { thrown: [["2026-04-06", 85]], overrides })).firstFreeDay).toBe(
      "2026-04-07",
    );
  });
});
