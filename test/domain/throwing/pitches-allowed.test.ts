import { describe, expect, it } from "vitest";
import { firstDayWithRoom, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { CAUTIOUS_READING } from "@/server/domain/throwing/throw-entry";
import { ask, type Throws } from "./arm-question";

describe("age on the day", () => {
  // Turns 9 on Wed 25 Nov 2026: 50 a day and two days of rest at most before, 75 and four after.
  const bornOn = "2017-11-25";

  it("decides that day's number: the birthday itself has the new one", () => {
    expect(pitchesAllowed(ask("2026-11-24", { bornOn })).pitches).toBe(50);
    expect(pitchesAllowed(ask("2026-11-25", { bornOn })).pitches).toBe(75);
  });

  it("decides the rest by the day of the throw, though a birthday lies between", () => {
    const thrown: Throws[] = [["2026-11-24", 60]];
    expect(pitchesAllowed(ask("2026-11-25", { bornOn, thrown })).firstFreeDay).toBe("2026-11-27");
    expect(pitchesAllowed(ask("2026-11-26", { bornOn, thrown: [["2026-11-25", 60]] })).firstFreeDay).toBe(
      "2026-11-29",
    );
  });

  it("holds today to today's row before an outing on the far side of a birthday", () => {
    // Turns 15 on 25 Nov: at 14 no rest goes to 20, at 15 to 30.
    const planned: Throws[] = [["2026-11-25", 50]];
    expect(pitchesAllowed(ask("2026-11-24", { bornOn: "2011-11-25", planned })).pitches).toBe(20);
    expect(pitchesAllowed(ask("2026-11-24", { bornOn: "2011-11-24", planned })).pitches).toBe(30);
  });

  it("born on 29 February, grows older on 1 March of a common year and on 29 February of a leap year", () => {
    const at = (day: string) => pitchesAllowed(ask(day, { bornOn: "2016-02-29" })).pitches;
    expect([at("2027-02-28"), at("2027-03-01")]).toEqual([75, 85]);
    expect([at("2028-02-28"), at("2028-02-29")]).toEqual([85, 85]);
    const eight = (day: string) => pitchesAllowed(ask(day, { bornOn: "2020-02-29" })).pitches;
    expect([eight("2029-02-28"), eight("2029-03-01")]).toEqual([50, 75]);
  });

  it.each([
    ["the day before 7", "2026-11-24", "2019-11-25", 6],
    ["23 that day", "2026-11-25", "2003-11-25", 23],
    ["not born", "2026-11-25", "2026-11-26", -1],
  ])("outside 7 to 22 has no published limit, never a guess: %s", (_name, day, bornOnDay, ageYears) => {
    expect(pitchesAllowed(ask(day, { bornOn: bornOnDay, thrown: [[day, 100]] }))).toMatchObject({
      status: "no_published_limit",
      pitches: null,
      firstFreeDay: null,
      reasons: [{ kind: "no_published_limit", ageYears }],
    });
  });

  it("owes no rest for what was thrown at an age without a published limit, and counts it as a day pitched", () => {
    const born = "2019-11-25";
    expect(pitchesAllowed(ask("2026-11-25", { bornOn: born, thrown: [["2026-11-24", 60]] })).pitches).toBe(
      50,
    );
    const twoDays: Throws[] = [
      ["2026-11-23", 5],
      ["2026-11-24", 5],
    ];
    expect(pitchesAllowed(ask("2026-11-25", { bornOn: born, thrown: twoDays })).status).toBe("resting");
  });

  it("names no first free day when the book ends before it", () => {
    const answer = pitchesAllowed(ask("2026-11-24", { bornOn: "2003-11-25", thrown: [["2026-11-23", 110]] }));
    expect(answer).toMatchObject({ status: "resting", pitches: 0, firstFreeDay: null });
  });
});

describe("pain", () => {
  const pain = {
    kind: "pain" as const,
    firstFeltOn: "2026-11-20",
    lastFeltOn: "2026-11-22",
    reportIds: ["a", "b"],
  };

  it.each([
    ["a rested 12-year-old", "2014-05-10", "guardian"],
    ["an athlete of 18", "2008-11-25", "athlete"],
    ["an athlete a day short of 18", "2008-11-26", "guardian"],
    ["an age without a published limit", "2021-01-01", "guardian"],
  ])("stops %s with no first free day, and says who clears it", (_name, bornOn, clearedBy) => {
    const question = ask("2026-11-25", { bornOn, pain });
    expect(pitchesAllowed(question)).toMatchObject({
      status: "pain",
      pitches: 0,
      firstFreeDay: null,
      reasons: [{ kind: "pain", painKind: "pain", feltOn: "2026-11-20", clearedBy, reportIds: ["a", "b"] }],
    });
    expect(firstDayWithRoom(question, 1)).toBeNull();
  });
});

describe("what was not reported", () => {
  const today = "2026-11-26";

  it.each([
    ["2026-11-19", "2026-11-26", null],
    ["2026-11-18", "2026-11-26", "2026-11-18"],
    ["2026-11-03", "2026-11-26", "2026-11-03"],
    ["2026-11-19", "2026-12-20", null],
    ["2026-11-03", "2026-11-10", null],
    ["2026-11-03", "2026-11-11", "2026-11-03"],
  ])("last spoken of on %s and asked for %s: since %s", (lastReportedOn, day, since) => {
    expect(pitchesAllowed(ask(day, { today, lastReportedOn })).nothingReportedSince).toBe(since);
  });

  it("moves on with the log by itself, and keeps to the academy's own span", () => {
    const lastReportedOn = "2026-11-03";
    const thrown: Throws[] = [["2026-11-17", 0]];
    expect(pitchesAllowed(ask(today, { lastReportedOn, thrown })).nothingReportedSince).toBe("2026-11-17");
    const reading = { ...CAUTIOUS_READING, askAfterDays: 9 };
    expect(pitchesAllowed(ask(today, { lastReportedOn, thrown, reading })).nothingReportedSince).toBeNull();
  });
});

describe("the first day with room for a number", () => {
  const thrown: Throws[] = [["2026-11-25", 51]];
  const planned: Throws[] = [["2026-12-01", 36]];

  it.each([
    [1, "2026-11-29"],
    [35, "2026-11-29"],
    [36, "2026-12-01"],
    [49, "2026-12-01"],
    [50, "2026-12-04"],
    [85, "2026-12-04"],
    [86, null],
  ])("for %i is %s", (pitches, day) => {
    expect(firstDayWithRoom(ask("2026-11-26", { thrown, planned }), pitches)).toBe(day);
  });

  it("may be the day itself", () => {
    expect(firstDayWithRoom(ask("2026-11-26"), 85)).toBe("2026-11-26");
  });
});
