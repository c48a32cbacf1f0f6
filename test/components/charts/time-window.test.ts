import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daysOn } from "@/components/charts/time-axis";
import { holding, isWhole, LEAST_WINDOW_DAYS, moved, since, zoomed } from "@/components/charts/time-window";
import { addDays } from "@/server/domain/time/calendar-day";

const whole = { startDay: "2023-12-01", endDay: "2026-12-01" };

describe("a window on a season", () => {
  it.each([
    ["half as many days about a day in the middle", zoomed(whole, whole, 0.5, "2025-06-01"), 548],
    ["twice as many as there are", zoomed(whole, whole, 2, "2025-06-01"), 1096],
    ["no fewer than four weeks", zoomed(since(whole, "2026-11-01"), whole, 0.5, "2026-11-20"), 28],
    ["twelve months", since(whole, "2025-12-01"), 365],
  ])("shows %s", (_, axis, days) => {
    expect(daysOn(axis)).toBe(days);
  });

  it("keeps its day where it was when it narrows", () => {
    expect(zoomed(whole, whole, 0.5, "2026-12-01").endDay).toBe("2026-12-01");
    expect(zoomed(whole, whole, 0.5, "2023-12-01").startDay).toBe("2023-12-01");
  });

  it("moves by half of itself, and stops at either end", () => {
    const year = since(whole, "2025-12-01");
    expect(moved(year, whole, -1).startDay).toBe("2025-06-01");
    expect(moved(year, whole, 1)).toEqual(year);
  });

  it("is the same where it holds a day, and holds it afterwards where it does not", () => {
    const year = since(whole, "2025-12-01");
    expect(holding(year, whole, "2026-01-05")).toBe(year);
    const earlier = holding(year, whole, "2024-03-05");
    expect(earlier.startDay <= "2024-03-05" && "2024-03-05" < earlier.endDay).toBe(true);
  });

  it("never leaves the whole, whatever is asked for", () => {
    const day = fc.integer({ min: -50, max: 1200 }).map((days) => addDays(whole.startDay, days));
    fc.assert(
      fc.property(
        day,
        fc.constantFrom(0.5, 2),
        fc.constantFrom(-1 as const, 1 as const),
        (about, factor, way) => {
          const first = zoomed(since(whole, about), whole, factor, about);
          for (const axis of [first, moved(first, whole, way), holding(first, whole, about)]) {
            expect(axis.startDay >= whole.startDay && axis.endDay <= whole.endDay).toBe(true);
            expect(daysOn(axis)).toBeGreaterThanOrEqual(LEAST_WINDOW_DAYS);
          }
        },
      ),
    );
  });

  it("is whole when nothing is left out", () => {
    expect(isWhole(whole, whole)).toBe(true);
    expect(isWhole(since(whole, "2024-01-01"), whole)).toBe(false);
  });
});
