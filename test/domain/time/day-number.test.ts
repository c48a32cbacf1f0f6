import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, addMonths, daysBetween } from "@/server/domain/time/calendar-day";
import { dayNumber, dayOfNumber, monthsBefore, numberOf, partsOf } from "@/server/domain/time/day-number";

const anyNumber = fc.integer({ min: dayNumber("0001-01-01"), max: dayNumber("9998-06-30") });

describe("days as numbers", () => {
  it.each([
    ["1970-01-01", 0],
    ["1970-01-02", 1],
    ["1969-12-31", -1],
    ["2000-02-29", 11_016],
    ["2026-11-25", 20_782],
  ])("count %s as %i", (day, number) => {
    expect(dayNumber(day)).toBe(number);
    expect(dayOfNumber(number)).toBe(day);
  });

  it("follow the calendar, forward and back", () => {
    fc.assert(
      fc.property(anyNumber, fc.integer({ min: -40, max: 400 }), (number, days) => {
        const day = dayOfNumber(number);
        expect(dayNumber(day)).toBe(number);
        expect(dayOfNumber(number + days)).toBe(addDays(day, days));
        expect(daysBetween("1970-01-01", day)).toBe(number);
        const { year, month, date } = partsOf(number);
        expect(numberOf(year, month, date)).toBe(number);
      }),
    );
  });

  it("step back by months as the calendar does, the last day of a shorter month standing in", () => {
    fc.assert(
      fc.property(anyNumber, fc.integer({ min: 0, max: 30 }), (number, months) => {
        fc.pre(number > dayNumber("0010-01-01"));
        expect(dayOfNumber(monthsBefore(number, months))).toBe(addMonths(dayOfNumber(number), -months));
      }),
    );
    expect(dayOfNumber(monthsBefore(dayNumber("2028-03-31"), 1))).toBe("2028-02-29");
  });

  it("take 29 February of a common year for 1 March", () => {
    expect(dayOfNumber(numberOf(2027, 2, 29))).toBe("2027-03-01");
  });
});
