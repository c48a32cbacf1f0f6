import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { asPercent, axisOver, daysOn, monthTicks, placeOn, thinTicks } from "@/components/charts/time-axis";
import { addDays } from "@/server/domain/time/calendar-day";

const anyDay = fc.integer({ min: 0, max: 4000 }).map((days) => addDays("2020-01-01", days));
const season = { startDay: "2026-09-10", endDay: "2027-03-01" };

describe("a day on an axis", () => {
  it.each([
    ["2026-11-01", 0],
    ["2026-11-16", 0.5],
    ["2026-12-01", 1],
    ["2026-10-31", 0],
    ["2027-01-01", 1],
  ])("%s stands at %d of November", (day, share) => {
    expect(placeOn({ startDay: "2026-11-01", endDay: "2026-12-01" }, day)).toBeCloseTo(share, 10);
  });

  it("never stands left of an earlier one", () => {
    fc.assert(
      fc.property(anyDay, anyDay, anyDay, (one, other, start) => {
        const axis = { startDay: start, endDay: addDays(start, 200) };
        const [early = "", late = ""] = [one, other].sort();
        expect(placeOn(axis, early)).toBeLessThanOrEqual(placeOn(axis, late));
      }),
    );
  });

  it("is written to a hundredth of a percent", () => {
    expect(asPercent(1 / 3)).toBe("33.33%");
    expect(asPercent(1)).toBe("100%");
  });
});

describe("months on an axis", () => {
  it("are named where they begin, with the year at the first and in January", () => {
    expect(monthTicks(season).map(({ label }) => label)).toEqual([
      "Oct 2026",
      "Nov",
      "Dec",
      "Jan 2027",
      "Feb",
    ]);
  });

  it("include the month that begins with the axis, and not the one that begins at its end", () => {
    const days = monthTicks({ startDay: "2026-10-01", endDay: "2026-12-01" }).map(({ day }) => day);
    expect(days).toEqual(["2026-10-01", "2026-11-01"]);
  });

  it("are none within one month", () => {
    expect(monthTicks({ startDay: "2026-10-02", endDay: "2026-10-30" })).toEqual([]);
  });
});

describe("an axis over days", () => {
  it("holds every one of them, in whole months", () => {
    expect(axisOver(["2026-11-30", "2026-09-15"])).toEqual({ startDay: "2026-09-01", endDay: "2026-12-01" });
    expect(axisOver(["2026-12-31"])).toEqual({ startDay: "2026-12-01", endDay: "2027-01-01" });
    fc.assert(
      fc.property(fc.array(anyDay, { minLength: 1 }), (days) => {
        const axis = axisOver(days);
        expect(axis?.startDay.endsWith("-01") && axis.endDay.endsWith("-01")).toBe(true);
        expect(days.every((day) => axis && day >= axis.startDay && day < axis.endDay)).toBe(true);
      }),
    );
  });

  it("is none without days", () => {
    expect(axisOver([])).toBeNull();
  });

  it("is never shorter than a day", () => {
    expect(daysOn({ startDay: "2026-11-01", endDay: "2026-11-01" })).toBe(1);
    expect(daysOn(season)).toBe(172);
  });
});

describe("months on a narrow axis", () => {
  it("are thinned out to quarters, halves and years", () => {
    const whole = { startDay: "2023-12-01", endDay: "2026-12-01" };
    const labels = (widthPx: number) => thinTicks(whole, widthPx).map(({ label }) => label);
    expect(labels(960)).toEqual([
      ...["Jan 2024", "Apr", "Jul", "Oct", "Jan 2025", "Apr", "Jul", "Oct", "Jan 2026", "Apr", "Jul"],
    ]);
    expect(labels(300)).toEqual(["Jan 2024", "Jan 2025", "Jan 2026"]);
  });

  it("never touch one another or run past the end", () => {
    const widths = fc.integer({ min: 1, max: 2000 });
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 1, max: 4000 }), widths, (startDay, days, widthPx) => {
        const axis = { startDay, endDay: addDays(startDay, days) };
        const places = thinTicks(axis, widthPx).map(({ day }) => placeOn(axis, day) * widthPx);
        for (const [index, place] of places.entries()) {
          expect((places[index + 1] ?? widthPx) - place).toBeGreaterThan(63.9);
        }
      }),
    );
  });
});
