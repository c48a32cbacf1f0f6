import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ageFinder } from "@/server/domain/throwing/age-finder";
import { ageFaults, rangeForAge } from "@/server/domain/throwing/age-ranges";
import { type AgeBasis, ageByBook } from "@/server/domain/throwing/rule-book";
import { addDays } from "@/server/domain/time/calendar-day";
import { dayNumber } from "@/server/domain/time/day-number";

// Little League: the age on 31 August of the year for baseball, on 31 December of the year before for softball (both
// from memory).
const BASEBALL: AgeBasis = { kind: "league_age", cutOff: "08-31", yearOffset: 0 };
const SOFTBALL: AgeBasis = { kind: "league_age", cutOff: "12-31", yearOffset: -1 };
const ON_DAY: AgeBasis = { kind: "on_day" };

describe("the age a book goes by", () => {
  it.each([
    ["baseball, born on the cut-off", BASEBALL, "2014-08-31", "2026-04-01", 12],
    ["baseball, born the day after", BASEBALL, "2014-09-01", "2026-04-01", 11],
    ["baseball, after the cut-off of the year", BASEBALL, "2014-09-01", "2026-12-31", 11],
    ["baseball, in the new year", BASEBALL, "2014-09-01", "2027-01-01", 12],
    ["softball, born on New Year's Eve", SOFTBALL, "2014-12-31", "2026-06-01", 11],
    ["softball, born on New Year's Day", SOFTBALL, "2015-01-01", "2026-06-01", 10],
    ["the age on the day", ON_DAY, "2014-05-10", "2026-05-09", 11],
    ["the age on the birthday", ON_DAY, "2014-05-10", "2026-05-10", 12],
    ["born on 29 February, on 28 February of a common year", ON_DAY, "2016-02-29", "2027-02-28", 10],
    ["born on 29 February, on 1 March of a common year", ON_DAY, "2016-02-29", "2027-03-01", 11],
    ["not born", ON_DAY, "2027-01-01", "2026-12-31", -1],
  ] as const)("%s", (_name, basis, bornOn, day, age) => {
    expect(ageByBook(basis, bornOn, day)).toBe(age);
  });

  it("is the same when it is found for one day after another, in any order", () => {
    const day = fc.integer({ min: 0, max: 12_000 }).map((days) => addDays("2000-01-01", days));
    fc.assert(
      fc.property(fc.constantFrom(BASEBALL, SOFTBALL, ON_DAY), day, fc.array(day), (basis, bornOn, days) => {
        const ageAt = ageFinder(basis, bornOn);
        for (const each of days) expect(ageAt(dayNumber(each))).toBe(ageByBook(basis, bornOn, each));
      }),
      { numRuns: 300 },
    );
  });
});

describe("ranges of ages", () => {
  const RANGES = [
    { ageMin: 7, ageMax: 8 },
    { ageMin: 9, ageMax: 12 },
  ];

  it.each([
    [6, null],
    [7, 7],
    [8, 7],
    [12, 9],
    [13, null],
  ])("hold age %i from %s", (age, from) => {
    expect(rangeForAge(RANGES, age)?.ageMin ?? null).toBe(from);
  });

  it("are refused with a gap, an overlap, or the wrong way round, at the place", () => {
    const faults = (...ranges: [number, number][]) =>
      ageFaults(ranges.map(([ageMin, ageMax]) => ({ ageMin, ageMax }))).map(({ path }) => path.join("."));
    expect(faults([7, 8], [9, 12])).toEqual([]);
    expect(faults([7, 8], [10, 12])).toEqual(["1.ageMin"]);
    expect(faults([7, 8], [8, 12])).toEqual(["1.ageMin"]);
    expect(faults([8, 7])).toEqual(["0.ageMax"]);
  });
});
