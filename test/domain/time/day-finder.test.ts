import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayFinder } from "@/server/domain/time/day-finder";

describe("finding the days of many instants", () => {
  it.each([
    ["America/New_York", "2026-03-01", "2026-03-15"],
    ["America/New_York", "2026-10-25", "2026-11-08"],
    ["Europe/Berlin", "2024-02-20", "2024-04-05"],
    ["Africa/Cairo", "2026-04-20", "2026-04-28"],
    ["Pacific/Apia", "2026-01-01", "2026-01-01"],
  ])("agrees with the calendar in %s from %s to %s, and outside", (zone, fromDay, toDay) => {
    const find = dayFinder(zone, fromDay, toDay);
    const reach = { min: Date.parse(fromDay) - 5 * 86_400_000, max: Date.parse(toDay) + 5 * 86_400_000 };
    fc.assert(
      fc.property(fc.integer(reach), (instantMs) => {
        expect(find(instantMs)).toBe(dayOf(instantMs, zone));
      }),
    );
  });

  it("tells the last millisecond of a day from the first of the next", () => {
    const find = dayFinder("America/New_York", "2026-11-20", "2026-11-30");
    const midnightMs = Date.UTC(2026, 10, 26, 5);
    expect(find(midnightMs - 1)).toBe("2026-11-25");
    expect(find(midnightMs)).toBe("2026-11-26");
  });
});
