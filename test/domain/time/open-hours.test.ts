import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, dayOf, instantOf, weekdayOf } from "@/server/domain/time/calendar-day";
import {
  afterOpenMs,
  firstOpenDay,
  OPENING_SEARCH_DAYS,
  type OpenHours,
  openingsOn,
  openMsBetween,
} from "@/server/domain/time/open-hours";
import { minuteIsOpen, walkOpenMinutes, wallClock } from "../../helpers/wall-clock";

const HOUR_MS = 3_600_000;
const MINUTE_MS = 60_000;
const weekdays = [1, 2, 3, 4, 5].map((weekday) => ({ weekday, opensMin: 540, closesMin: 1020 }));
const site = (changes: Partial<OpenHours> = {}): OpenHours => ({
  zone: "America/New_York",
  week: weekdays,
  closedOn: new Set(),
  ...changes,
});

/** A site with one or two openings on some days, on whole half hours away from the hours that clocks change in. */
const anySite = fc
  .record({
    zone: fc.constantFrom("America/New_York", "America/Los_Angeles", "America/Phoenix"),
    days: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 7 }),
    opens: fc.integer({ min: 10, max: 24 }),
    long: fc.integer({ min: 1, max: 10 }),
    evening: fc.boolean(),
    closedAfter: fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { maxLength: 4 }),
    fromDay: fc.constantFrom(
      "2026-03-06",
      "2026-03-07",
      "2026-10-30",
      "2026-12-30",
      "2028-02-28",
      "2026-06-10",
    ),
    fromMinute: fc.integer({ min: 0, max: 1439 }),
  })
  .map(({ zone, days, opens, long, evening, closedAfter, fromDay, fromMinute }) => ({
    hours: {
      zone,
      week: days.flatMap((weekday) => [
        { weekday, opensMin: opens * 30, closesMin: (opens + long) * 30 },
        ...(evening ? [{ weekday, opensMin: 1080, closesMin: 1260 }] : []),
      ]),
      closedOn: new Set(closedAfter.map((after) => addDays(fromDay, after))),
    } satisfies OpenHours,
    fromMs: instantOf(fromDay, fromMinute, zone),
  }));

describe("the openings of a day", () => {
  it("are none on a weekday without hours and none on a holiday", () => {
    expect(openingsOn(site(), "2026-03-07")).toEqual([]);
    expect(openingsOn(site({ closedOn: new Set(["2026-03-09"]) }), "2026-03-09")).toEqual([]);
  });

  it("come earliest first, whatever order they were entered in", () => {
    const hours = site({
      week: [
        { weekday: 1, opensMin: 960, closesMin: 1200 },
        { weekday: 1, opensMin: 540, closesMin: 720 },
      ],
    });
    expect(openingsOn(hours, "2026-03-09").map(({ startMs }) => new Date(startMs).toISOString())).toEqual([
      "2026-03-09T13:00:00.000Z",
      "2026-03-09T20:00:00.000Z",
    ]);
  });

  it("keep their wall-clock times on both sides of a clock change", () => {
    const everyDay = site({ week: [6, 7].map((weekday) => ({ weekday, opensMin: 540, closesMin: 1020 })) });
    const opens = ["2026-03-07", "2026-03-08", "2026-10-31", "2026-11-01"].map((day) =>
      new Date(openingsOn(everyDay, day)[0]?.startMs ?? 0).toISOString().slice(11, 16),
    );
    expect(opens).toEqual(["14:00", "13:00", "13:00", "14:00"]);
  });

  it.each([
    ["2026-03-08", 3],
    ["2026-11-01", 5],
    ["2026-03-15", 4],
  ])("from midnight to four on %s last %i real hours", (day, realHours) => {
    const night = site({ week: [{ weekday: 7, opensMin: 0, closesMin: 240 }] });
    const [opening] = openingsOn(night, day);
    expect((opening?.endMs ?? 0) - (opening?.startMs ?? 0)).toBe(realHours * HOUR_MS);
  });

  it("may last to the next midnight", () => {
    const [opening] = openingsOn(
      site({ week: [{ weekday: 1, opensMin: 600, closesMin: 1440 }] }),
      "2026-03-09",
    );
    expect(opening?.endMs).toBe(instantOf("2026-03-10", 0, "America/New_York"));
  });

  it("leave out one that ends before it begins, and one that a clock change swallows", () => {
    expect(openingsOn(site({ week: [{ weekday: 1, opensMin: 600, closesMin: 600 }] }), "2026-03-09")).toEqual(
      [],
    );
    const swallowed = site({ week: [{ weekday: 7, opensMin: 120, closesMin: 180 }] });
    expect(openingsOn(swallowed, "2026-03-08")).toEqual([]);
    expect(openingsOn(swallowed, "2026-03-15")).toHaveLength(1);
  });

  it("count no minute twice when two of them overlap, and keep apart two that only touch", () => {
    const overlapping = site({
      week: [
        { weekday: 1, opensMin: 540, closesMin: 720 },
        { weekday: 1, opensMin: 600, closesMin: 660 },
        { weekday: 1, opensMin: 700, closesMin: 800 },
        { weekday: 1, opensMin: 800, closesMin: 860 },
      ],
    });
    const openings = openingsOn(overlapping, "2026-03-09");
    expect(openings.map(({ startMs, endMs }) => (endMs - startMs) / MINUTE_MS)).toEqual([260, 60]);
  });
});

describe("the first open day", () => {
  it("is the day itself when it is open, else the next one past weekend and holidays", () => {
    expect(firstOpenDay(site(), "2026-03-06")).toBe("2026-03-06");
    expect(firstOpenDay(site(), "2026-03-07")).toBe("2026-03-09");
    expect(firstOpenDay(site({ closedOn: new Set(["2026-03-09", "2026-03-10"]) }), "2026-03-07")).toBe(
      "2026-03-11",
    );
  });

  it("is looked for over a long closure, but not for ever", () => {
    const closedFor = (days: number) =>
      site({ closedOn: new Set(Array.from({ length: days }, (_, ahead) => addDays("2026-03-09", ahead))) });
    expect(firstOpenDay(closedFor(99), "2026-03-09")).toBe("2026-06-16");
    expect(firstOpenDay(closedFor(OPENING_SEARCH_DAYS + 1), "2026-03-09")).toBeNull();
    expect(firstOpenDay(site({ week: [] }), "2026-03-09")).toBeNull();
  });
});

describe("open time", () => {
  it("is nothing overnight, at weekends, and when the end is not after the start", () => {
    const at = (day: string, minute: number) => instantOf(day, minute, "America/New_York");
    expect(openMsBetween(site(), at("2026-03-06", 1020), at("2026-03-09", 540))).toBe(0);
    expect(openMsBetween(site(), at("2026-03-06", 1019), at("2026-03-09", 541))).toBe(2 * MINUTE_MS);
    expect(openMsBetween(site(), at("2026-03-06", 700), at("2026-03-06", 700))).toBe(0);
    expect(openMsBetween(site(), at("2026-03-06", 700), at("2026-03-05", 700))).toBe(0);
  });

  it("starts at once when the site is open, and at the next opening when it is not", () => {
    const at = (day: string, minute: number) => instantOf(day, minute, "America/New_York");
    expect(afterOpenMs(site(), at("2026-03-05", 600), HOUR_MS)).toBe(at("2026-03-05", 660));
    expect(afterOpenMs(site(), at("2026-03-06", 1000), HOUR_MS)).toBe(at("2026-03-09", 580));
    expect(afterOpenMs(site(), at("2026-03-06", 960), HOUR_MS)).toBe(at("2026-03-06", 1020));
    expect(afterOpenMs(site(), at("2026-03-07", 600), 0)).toBe(at("2026-03-07", 600));
  });

  it("never comes at a site that does not open", () => {
    expect(afterOpenMs(site({ week: [] }), Date.UTC(2026, 2, 9), HOUR_MS)).toBeNull();
  });

  it("passes as a slow walk minute by minute on the wall clock says", () => {
    fc.assert(
      fc.property(anySite, fc.integer({ min: 1, max: 900 }), ({ hours, fromMs }, minutes) => {
        expect(afterOpenMs(hours, fromMs, minutes * MINUTE_MS)).toBe(walkOpenMinutes(hours, fromMs, minutes));
      }),
      { numRuns: 25 },
    );
  });

  it("between two instants is the number of open minutes that a slow walk counts", () => {
    fc.assert(
      fc.property(anySite, fc.integer({ min: 0, max: 4000 }), ({ hours, fromMs }, minutes) => {
        const clock = wallClock(hours.zone);
        const open = Array.from({ length: minutes }, (_, passed) => fromMs + passed * MINUTE_MS).filter(
          (at) => minuteIsOpen(hours, clock, at),
        );
        expect(openMsBetween(hours, fromMs, fromMs + minutes * MINUTE_MS)).toBe(open.length * MINUTE_MS);
      }),
      { numRuns: 25 },
    );
  });

  it("measured up to where it was counted to is what was counted", () => {
    fc.assert(
      fc.property(anySite, fc.integer({ min: 1, max: 30 * HOUR_MS }), ({ hours, fromMs }, openMs) => {
        const end = afterOpenMs(hours, fromMs, openMs);
        expect(end).not.toBeNull();
        expect(openMsBetween(hours, fromMs, end ?? 0)).toBe(openMs);
        expect(openingsOn(hours, dayOf((end ?? 0) - 1, hours.zone))).not.toEqual([]);
        expect(
          hours.week.some(({ weekday }) => weekday === weekdayOf(dayOf((end ?? 0) - 1, hours.zone))),
        ).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});
