import { isDeepStrictEqual } from "node:util";
import { describe, expect, it } from "vitest";
import { restDaysAfter } from "@/server/domain/throwing/age-band";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { adviceForAge, bandForAge, ruleBookSchema, rulesOf } from "@/server/domain/throwing/rule-book";
import { SHIPPED_BOOKS } from "@/server/domain/throwing/shipped-books";
import { addDays } from "@/server/domain/time/calendar-day";
import published from "../../reference/pitch-smart.json";
import { ask } from "./arm-question";

// Source of every figure here: MLB and USA Baseball, Pitch Smart pitching guidelines, with the rows and the rule on
// days in a row announced for the 2018 season. See test/reference/pitch-smart.json.

const AGE_BANDS = rulesOf(USA_BASEBALL_2018, "pitch_count").flatMap((rule) => rule.ageBands);

/** Both clock changes in the United States, the year's end, and the end of February in a leap and a common year. */
const THROWN_ON = ["2026-03-07", "2026-10-31", "2026-12-30", "2028-02-27", "2027-02-27", "2026-04-06"];

const AGES = published.tableSince2018.flatMap((row) =>
  Array.from({ length: row.ageMax - row.ageMin + 1 }, (_, index) => ({ row, age: row.ageMin + index })),
);

/** One case for each end of each rest band at each age: the two sides of every boundary in the table. */
const CASES = AGES.flatMap(({ row, age }) =>
  row.restBands.flatMap((band) =>
    [band.minPitches, band.maxPitches].map((pitches) => ({ age, pitches, restDays: band.restDays })),
  ),
);

/** A birth date whose birthday was two months before the day, so that no birthday falls into a case. */
function bornForAge(age: number, day: string): string {
  const birthday = daysLater(day, -60);
  return `${Number(birthday.slice(0, 4)) - age}${birthday.slice(4)}`;
}

/** The calendar counted out by hand, apart from the product's own arithmetic. */
function daysLater(day: string, days: number): string {
  return new Date(Date.parse(`${day}T12:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

describe("the published table", () => {
  it("is looked at whole: 7 rows, 16 ages, 34 rest bands, 160 ends of bands", () => {
    expect(published.tableSince2018).toHaveLength(7);
    expect(AGES.map(({ age }) => age)).toEqual([7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22]);
    expect(published.tableSince2018.flatMap((row) => row.restBands)).toHaveLength(34);
    expect(CASES).toHaveLength(160);
  });

  it("ships row by row as it was published", () => {
    expect(AGE_BANDS).toEqual(published.tableSince2018);
    expect(SHIPPED_BOOKS).toContain(USA_BASEBALL_2018);
    expect(ruleBookSchema.parse(USA_BASEBALL_2018)).toEqual(USA_BASEBALL_2018);
  });

  it.each(CASES)("age $age: $pitches ask for $restDays days of rest", ({ age, pitches, restDays }) => {
    const band = bandForAge(USA_BASEBALL_2018, age, "2026-04-06");
    expect(band && restDaysAfter(band, pitches)).toBe(restDays);
  });

  it.each(CASES)(
    "age $age: $pitches keep the arm off the mound for exactly $restDays full days, whatever the calendar does",
    ({ age, pitches, restDays }) => {
      for (const thrownOn of THROWN_ON) {
        const question = {
          bornOn: bornForAge(age, thrownOn),
          thrown: [[thrownOn, pitches] as [string, number]],
        };
        const onDay = (ahead: number) => pitchesAllowed(ask(daysLater(thrownOn, ahead), question));
        const freeDay = daysLater(thrownOn, restDays + 1);
        for (let ahead = 1; ahead <= restDays; ahead += 1) {
          expect(onDay(ahead)).toMatchObject({ status: "resting", pitches: 0, firstFreeDay: freeDay });
        }
        expect(onDay(restDays + 1)).toMatchObject({ status: "at_most", firstFreeDay: null });
        expect(onDay(restDays + 1).pitches).toBeGreaterThan(0);
      }
    },
  );

  it.each(AGES)("age $age: a rested arm has the row's daily number, and not one more", ({ row, age }) => {
    for (const day of THROWN_ON) {
      const bornOn = bornForAge(age, day);
      const max = row.dailyMaxPitches;
      expect(pitchesAllowed(ask(day, { bornOn })).pitches).toBe(max);
      expect(pitchesAllowed(ask(day, { bornOn, thrown: [[day, max - 1]] })).pitches).toBe(1);
      expect(pitchesAllowed(ask(day, { bornOn, thrown: [[day, max]] })).pitches).toBe(0);
      expect(pitchesAllowed(ask(day, { bornOn, thrown: [[day, max + 1]] })).pitches).toBe(0);
    }
  });

  it.each(AGES)(
    "age $age: more than the daily number takes the last band and is named as more",
    ({ row, age }) => {
      const bornOn = bornForAge(age, "2026-04-06");
      const answer = pitchesAllowed(
        ask("2026-04-07", { bornOn, thrown: [["2026-04-06", row.dailyMaxPitches + 1]] }),
      );
      const restDays = row.restBands.at(-1)?.restDays ?? 0;
      expect(answer).toMatchObject({
        status: "resting",
        firstFreeDay: daysLater("2026-04-06", restDays + 1),
      });
      expect(answer.reasons).toMatchObject([{ kind: "rest_owed", restDays, aboveDailyMax: true }]);
    },
  );

  it.each(AGES)(
    "age $age: an outing some days ahead holds today to the bands whose rest fits between",
    ({ row, age }) => {
      const day = "2026-10-31";
      for (let ahead = 1; ahead <= 7; ahead += 1) {
        const fitting = row.restBands.filter((band) => band.restDays <= ahead - 1);
        const planned: [string, number][] = [[daysLater(day, ahead), 10]];
        expect(pitchesAllowed(ask(day, { bornOn: bornForAge(age, day), planned })).pitches).toBe(
          fitting.at(-1)?.maxPitches,
        );
      }
    },
  );

  it.each(published.derivedTests)(
    "age $age, $pitches on $thrownOn: first eligible $firstFreeDay ($note)",
    ({ age, pitches, thrownOn, restDays, firstFreeDay }) => {
      const bornOn = bornForAge(age, thrownOn);
      const question = { bornOn, thrown: [[thrownOn, pitches] as [string, number]] };
      expect(pitchesAllowed(ask(firstFreeDay, question)).status).toBe("at_most");
      for (let ahead = 1; ahead <= restDays; ahead += 1) {
        const answer = pitchesAllowed(ask(addDays(thrownOn, ahead), question));
        expect(answer).toMatchObject({ status: "resting", firstFreeDay, reasons: [{ restDays }] });
      }
    },
  );

  it("differs from the rows of before 2018 where, and only where, 2018 changed them", () => {
    const differing = published.tableUntil2017
      .filter((row, index) => !isDeepStrictEqual(row, AGE_BANDS[index]))
      .map((row) => `${row.ageMin}-${row.ageMax}`);
    expect(differing).toEqual(["17-18", "19-22"]);
    for (const { age, pitches, restDays, restDaysUntil2017 } of published.derivedTests) {
      const old = published.tableUntil2017.find((row) => row.ageMin <= age && age <= row.ageMax);
      expect(old && restDaysAfter(old, pitches)).toBe(restDaysUntil2017);
      expect(restDays === restDaysUntil2017 || age >= 17).toBe(true);
    }
  });

  it.each([
    [8, 60],
    [9, 80],
    [12, 80],
    [13, 100],
    [18, 100],
  ])("age %i: the advice names %i innings in twelve months", (age, innings) => {
    const rows = published.advice.map((row) => row.inningsInTwelveMonthsMax);
    expect(rows).toContain(innings);
    const words = adviceForAge(USA_BASEBALL_2018, age).map((line) => line.words);
    expect(words.filter((line) => line.includes("innings"))).toEqual([
      `At most ${innings} innings over any twelve months, all teams together.`,
    ]);
  });

  it("gives advice with its source up to 22, none after, and no number of innings from 19", () => {
    expect(adviceForAge(USA_BASEBALL_2018, 23)).toEqual([]);
    const atNineteen = adviceForAge(USA_BASEBALL_2018, 19).map((line) => line.words);
    expect(atNineteen).toContain("There is no number of innings for the year: keep track of them.");
    for (const line of USA_BASEBALL_2018.advice) expect(line.source).toMatch(/MLB and USA Baseball/);
  });
});
