import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dueAtMs, lateness, pausePromise, resumePromise } from "@/server/domain/reviews/promise";
import { addDays, instantOf } from "@/server/domain/time/calendar-day";
import { type OpenHours, openMsBetween } from "@/server/domain/time/open-hours";
import { walkOpenMinutes, walkToClose } from "../../helpers/wall-clock";

const HOUR_MS = 3_600_000;
const ZONES = ["America/New_York", "America/Los_Angeles", "America/Phoenix"] as const;
const open = (weekdays: number[], opensMin: number, closesMin: number) =>
  weekdays.map((weekday) => ({ weekday, opensMin, closesMin }));
const weekdays = open([1, 2, 3, 4, 5], 540, 1020);
const withSaturday = [...weekdays, ...open([6], 600, 840)];
const site = (zone: string, week = weekdays, closedOn: string[] = []): OpenHours => ({
  zone,
  week,
  closedOn: new Set(closedOn),
});
const days = (amount: number) => ({ kind: "working_days", amount }) as const;
const hoursOf = (amount: number) => ({ kind: "working_hours", amount }) as const;
const iso = (instantMs: number | null) =>
  instantMs === null ? null : new Date(instantMs).toISOString().slice(0, 16);

describe("a promise in working days", () => {
  // Clocks change on 2026-03-08 and 2026-11-01 in New York and Los Angeles, never in Phoenix (IANA tz database).
  it.each([
    ["Fri to Mon over the spring change", "America/New_York", "2026-03-06", 960, 1, "2026-03-09T21:00"],
    ["Fri to Mon over the spring change", "America/Los_Angeles", "2026-03-06", 960, 1, "2026-03-10T00:00"],
    ["Fri to Mon, no change", "America/Phoenix", "2026-03-06", 960, 1, "2026-03-10T00:00"],
    ["Fri to Mon over the autumn change", "America/New_York", "2026-10-30", 960, 1, "2026-11-02T22:00"],
    ["Fri to Mon over the autumn change", "America/Los_Angeles", "2026-10-30", 960, 1, "2026-11-03T01:00"],
    ["Fri to Mon, no change", "America/Phoenix", "2026-10-30", 960, 1, "2026-11-03T00:00"],
    ["a day in mid-week", "America/New_York", "2026-06-10", 600, 1, "2026-06-11T21:00"],
    ["two days from a Thursday", "America/New_York", "2026-06-11", 600, 2, "2026-06-15T21:00"],
    ["a Sunday, when nobody is there", "America/New_York", "2026-06-14", 720, 1, "2026-06-15T21:00"],
    ["the minute after midnight of an open day", "America/New_York", "2026-06-15", 1, 1, "2026-06-16T21:00"],
    ["the last minute of the day before", "America/New_York", "2026-06-14", 1439, 1, "2026-06-15T21:00"],
  ])("%s in %s: received %s minute %i, %i day(s), due %sZ", (_case, zone, day, minute, amount, due) => {
    expect(iso(dueAtMs(days(amount), site(zone), instantOf(day, minute, zone)))).toBe(due);
  });

  it("is the close of Saturday where the site opens on Saturday", () => {
    const friday = instantOf("2026-03-06", 960, "America/New_York");
    expect(iso(dueAtMs(days(1), site("America/New_York", withSaturday), friday))).toBe("2026-03-07T19:00");
    expect(iso(dueAtMs(days(2), site("America/New_York", withSaturday), friday))).toBe("2026-03-09T21:00");
  });

  it("is the end of the last opening of a day with two", () => {
    const twice = [...open([1, 2], 540, 720), ...open([1, 2], 960, 1200)];
    const monday = instantOf("2026-06-15", 600, "America/New_York");
    expect(iso(dueAtMs(days(1), site("America/New_York", twice), monday))).toBe("2026-06-17T00:00");
  });

  it("passes over holidays, a closed week and the year end", () => {
    const eve = instantOf("2026-12-30", 600, "America/New_York");
    expect(iso(dueAtMs(days(1), site("America/New_York", weekdays, ["2026-12-31", "2027-01-01"]), eve))).toBe(
      "2027-01-04T22:00",
    );
    const closedWeeks = Array.from({ length: 60 }, (_, ahead) => addDays("2026-06-11", ahead));
    const june = instantOf("2026-06-10", 600, "America/New_York");
    expect(iso(dueAtMs(days(1), site("America/New_York", weekdays, closedWeeks), june))).toBe(
      "2026-08-10T21:00",
    );
  });

  it("cannot be counted at a site that never opens", () => {
    expect(dueAtMs(days(1), site("America/New_York", []), 0)).toBeNull();
    expect(dueAtMs(hoursOf(1), site("America/New_York", []), 0)).toBeNull();
  });
});

describe("a promise in working hours", () => {
  it.each([
    ["inside one day", "2026-06-10", 600, 4, "2026-06-10T18:00"],
    ["to the very close", "2026-06-10", 780, 4, "2026-06-10T21:00"],
    ["on to the next morning", "2026-06-10", 960, 4, "2026-06-11T16:00"],
    ["over the weekend of the spring change", "2026-03-06", 960, 4, "2026-03-09T16:00"],
    ["over the weekend of the autumn change", "2026-10-30", 960, 4, "2026-11-02T17:00"],
    ["from the middle of the night", "2026-06-10", 120, 1, "2026-06-10T14:00"],
  ])("%s: received %s minute %i, %i hours, due %sZ", (_case, day, minute, amount, due) => {
    const zone = "America/New_York";
    expect(iso(dueAtMs(hoursOf(amount), site(zone), instantOf(day, minute, zone)))).toBe(due);
  });
});

const anyPromise = fc.record({
  zone: fc.constantFrom(...ZONES),
  openOn: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 7 }),
  opens: fc.integer({ min: 5, max: 12 }),
  long: fc.integer({ min: 1, max: 10 }),
  closedAfter: fc.uniqueArray(fc.integer({ min: 0, max: 9 }), { maxLength: 6 }),
  fromDay: fc.constantFrom(
    "2026-03-05",
    "2026-03-06",
    "2026-03-08",
    "2026-10-29",
    "2026-10-31",
    "2026-12-30",
  ),
  minute: fc.integer({ min: 0, max: 1439 }),
  amount: fc.integer({ min: 1, max: 3 }),
});

describe("any promise", () => {
  it("is due when a slow walk minute by minute on the wall clock says, in three zones and over both changes", () => {
    fc.assert(
      fc.property(anyPromise, ({ zone, openOn, opens, long, closedAfter, fromDay, minute, amount }) => {
        const closed = closedAfter.map((after) => addDays(fromDay, after));
        const hours = site(zone, open(openOn, opens * 60, (opens + long) * 60), closed);
        const from = instantOf(fromDay, minute, zone);
        expect(dueAtMs(days(amount), hours, from)).toBe(walkToClose(hours, from, amount));
        expect(dueAtMs(hoursOf(amount), hours, from)).toBe(walkOpenMinutes(hours, from, amount * 60));
      }),
      { numRuns: 30 },
    );
  });

  it("of more days is never due before one of fewer", () => {
    fc.assert(
      fc.property(anyPromise, ({ zone, openOn, opens, long, fromDay, minute, amount }) => {
        const hours = site(zone, open(openOn, opens * 60, (opens + long) * 60));
        const from = instantOf(fromDay, minute, zone);
        const sooner = dueAtMs(days(amount), hours, from) ?? 0;
        expect(dueAtMs(days(amount + 1), hours, from) ?? 0).toBeGreaterThan(sooner);
        expect(sooner).toBeGreaterThan(from);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a promise whose clock is stopped", () => {
  const zone = "America/New_York";
  const at = (day: string, minute: number) => instantOf(day, minute, zone);

  it("keeps the open time that was left, however long the new clip takes", () => {
    const due = at("2026-03-09", 1020);
    const left = pausePromise(site(zone), due, at("2026-03-09", 900));
    expect(left).toBe(2 * HOUR_MS);
    expect(resumePromise(site(zone), left, at("2026-03-09", 901))).toBe(at("2026-03-10", 541));
    expect(resumePromise(site(zone), left, at("2026-03-14", 700))).toBe(at("2026-03-16", 660));
  });

  it("is as late afterwards as it was before, when it was missed already", () => {
    const due = at("2026-03-09", 1020);
    const left = pausePromise(site(zone), due, due + 3 * HOUR_MS);
    const resumedAt = at("2026-03-14", 700);
    const dueAgain = resumePromise(site(zone), left, resumedAt);
    expect(lateness(dueAgain ?? 0, resumedAt)).toEqual({ kind: "late", lateByMs: 3 * HOUR_MS });
  });

  it("that was just due is due at once", () => {
    const due = at("2026-03-09", 1020);
    expect(pausePromise(site(zone), due, due)).toBe(0);
    expect(resumePromise(site(zone), 0, at("2026-03-14", 700))).toBe(at("2026-03-14", 700));
  });

  it("cannot be counted on at a site that no longer opens", () => {
    expect(resumePromise(site(zone, []), HOUR_MS, at("2026-03-14", 700))).toBeNull();
  });

  it("stopped and started again in one instant is due when it was, if that was in open time", () => {
    fc.assert(
      fc.property(anyPromise, fc.integer({ min: 0, max: 20 }), (drawn, laterHours) => {
        const hours = site(drawn.zone, open(drawn.openOn, drawn.opens * 60, (drawn.opens + drawn.long) * 60));
        const due =
          dueAtMs(hoursOf(drawn.amount + 20), hours, instantOf(drawn.fromDay, drawn.minute, drawn.zone)) ?? 0;
        const pausedAt = due - laterHours * HOUR_MS;
        const left = pausePromise(hours, due, pausedAt);
        const again = resumePromise(hours, left, pausedAt) ?? 0;
        expect(openMsBetween(hours, again, due)).toBe(0);
        if (left > 0) expect(again).toBe(due);
      }),
      { numRuns: 60 },
    );
  });
});

describe("lateness", () => {
  it.each([
    [1000, 400, { kind: "left", leftMs: 600 }],
    [1000, 1000, { kind: "left", leftMs: 0 }],
    [1000, 1001, { kind: "late", lateByMs: 1 }],
  ])("of a promise due at %i, at %i, is %o", (due, now, expected) => {
    expect(lateness(due, now)).toEqual(expected);
  });
});
