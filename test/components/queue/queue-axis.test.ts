import { describe, expect, it } from "vitest";
import { placeOnQueue, queueAxis } from "@/components/queue/queue-axis";

const HOUR_MS = 3_600_000;
/** Wed 25 Nov 2026, 15:00 in New York. */
const NOW_MS = Date.UTC(2026, 10, 25, 20);
const ZONE = "America/New_York";

describe("the axis of the queue", () => {
  it("holds now and every due ahead, in their order, away from the edges", () => {
    const dues = [2, 30, 50].map((hours) => NOW_MS + hours * HOUR_MS);
    const axis = queueAxis(dues, NOW_MS, ZONE);
    const places = [NOW_MS, ...dues].map((atMs) => placeOnQueue(axis, atMs));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0.03);
    expect(places.at(-1)).toBeLessThan(0.97);
    expect(axis.ticks.map((tick) => tick.label)).toEqual(["Thu 26", "Fri 27"]);
  });

  it("gives what is late at most a quarter of what lies ahead, and stands the rest at the edge", () => {
    const axis = queueAxis([NOW_MS - 500 * HOUR_MS, NOW_MS + 20 * HOUR_MS], NOW_MS, ZONE);
    expect((NOW_MS - axis.startMs) / HOUR_MS).toBeCloseTo(6);
    expect(placeOnQueue(axis, NOW_MS - 500 * HOUR_MS)).toBe(0);
  });

  it("counts hours when all is due within a day and a half, and never more ticks than can be read", () => {
    const short = queueAxis([NOW_MS + 3 * HOUR_MS], NOW_MS, ZONE);
    expect(short.ticks.map((tick) => tick.label)).toEqual(["18:00", "Thu 26"]);
    const long = queueAxis([NOW_MS + 400 * HOUR_MS], NOW_MS, ZONE);
    expect(long.ticks.length).toBeLessThanOrEqual(7);
  });

  it("puts midnight where the wall clock has it when the clock changes", () => {
    /* Clocks go back on Sun 1 Nov 2026: that day has 25 hours. */
    const axis = queueAxis([Date.UTC(2026, 10, 2, 20)], Date.UTC(2026, 9, 31, 18), ZONE);
    expect(axis.ticks.map((tick) => tick.atMs)).toEqual([Date.UTC(2026, 10, 1, 4), Date.UTC(2026, 10, 2, 5)]);
  });
});
