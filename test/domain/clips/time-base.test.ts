import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fileFps, rateRamps } from "@/server/domain/clips/frame-rate";
import { durationBetween, durationInWords, type TimeBase, timeBaseOf } from "@/server/domain/clips/time-base";

/** Times of frames that lie as far apart as the spacings say. */
function timesOf(spacings: readonly number[]): number[] {
  const times = [0];
  for (const spacing of spacings) times.push((times.at(-1) ?? 0) + spacing);
  return times;
}

const evenly = (fps: number, frames: number) => Array.from({ length: frames }, (_, at) => (at * 1000) / fps);
const repeat = (spacing: number, times: number) => new Array<number>(times).fill(spacing);

function trueBase(base: TimeBase) {
  if (base.kind !== "true") throw new Error(`not true: ${base.why}`);
  return base;
}

describe("the rate a file plays at", () => {
  it.each([
    ["30 a second", evenly(30, 90), 30],
    ["29.97 a second", evenly(30_000 / 1001, 90), 30_000 / 1001],
    ["240 a second", evenly(240, 500), 240],
    ["two frames", [0, 40], 25],
    ["a frame dropped", [0, 10, 20, 40, 50], 100],
    ["every tenth frame dropped", evenly(60, 300).filter((_, at) => at % 10 !== 5), 60],
    ["a start that stands still", timesOf([500, ...repeat(20, 80)]), 50],
  ])("reads %s", (_, times, fps) => {
    expect(fileFps(times)).toBeCloseTo(fps, 6);
  });

  it.each([30, 60, 120, 240, 480])("reads %i a second through times in whole milliseconds", (fps) => {
    const rounded = evenly(fps, 600).map((timeMs) => Math.round(timeMs));
    expect(Math.abs((fileFps(rounded) ?? 0) / fps - 1)).toBeLessThan(0.002);
  });

  it.each([
    ["no frame", []],
    ["one frame", [0]],
    ["frames all at one time", [0, 0, 0, 0]],
  ])("has none for %s", (_, times) => {
    expect(fileFps(times)).toBeNull();
  });
});

describe("a rate that ramps", () => {
  it.each([
    [
      "the middle eight times slower",
      timesOf([...repeat(4, 60), ...repeat(33, 120), ...repeat(4, 60)]),
      true,
    ],
    ["the middle twice as slow", timesOf([...repeat(17, 60), ...repeat(33, 60), ...repeat(17, 60)]), true],
    ["slow from half-way", timesOf([...repeat(8.3, 100), ...repeat(33.3, 40)]), true],
    ["a slope without a level", timesOf(Array.from({ length: 120 }, (_, at) => 4 * 1.02 ** at)), true],
    ["evenly spaced", evenly(240, 400), false],
    ["from 30 to 24 in poor light", timesOf([...repeat(33.3, 60), ...repeat(41.7, 60)]), false],
    ["every third frame dropped", evenly(60, 300).filter((_, at) => at % 3 !== 1), false],
    ["one gap of half a second", timesOf([...repeat(16.7, 60), 500, ...repeat(16.7, 60)]), false],
    ["times in whole milliseconds", evenly(480, 600).map((timeMs) => Math.round(timeMs)), false],
    ["four frames", [0, 4, 37, 70], false],
    ["no frame", [], false],
  ])("is told right for %s", (_, times, ramps) => {
    expect(rateRamps(times)).toBe(ramps);
  });

  it("is never seen in frames that waver between one and two spacings", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(16.7, 16.7, 16.7, 33.3), { minLength: 30, maxLength: 400 }),
        (spacings) => {
          expect(rateRamps(timesOf(spacings))).toBe(false);
        },
      ),
      { numRuns: 300, seed: 4 },
    );
  });
});

describe("the time base of a clip", () => {
  it("is true and unstretched where a clip was recorded at the rate it plays at", () => {
    expect(timeBaseOf({ frameTimesMs: evenly(60, 90), capturedFps: 60 })).toEqual({
      kind: "true",
      stretch: 1,
      fileFps: expect.closeTo(60, 6),
      capturedFps: 60,
    });
  });

  it("takes 30 and 29.97 for one rate", () => {
    const base = timeBaseOf({ frameTimesMs: evenly(30_000 / 1001, 90), capturedFps: 30 });
    expect(trueBase(base).stretch).toBe(1);
  });

  it.each([
    [4, 30, 120],
    [8, 30, 240],
    [5, 24, 120],
    [4, 60, 240],
  ])("is stretched %i times where %i a second were recorded at %i", (stretch, fps, capturedFps) => {
    const base = timeBaseOf({ frameTimesMs: evenly(fps, 120), capturedFps });
    expect(trueBase(base).stretch).toBeCloseTo(stretch, 9);
  });

  it("reads the example of its docstring", () => {
    const base = timeBaseOf({ frameTimesMs: [0, 40, 80, 120], capturedFps: 100 });
    expect(trueBase(base).stretch).toBeCloseTo(4, 9);
  });

  it("is unknown while nobody has said the rate, and says so", () => {
    const base = timeBaseOf({ frameTimesMs: evenly(30, 60), capturedFps: null });
    expect(base).toMatchObject({ kind: "unknown", why: expect.stringContaining("nobody has said") });
  });

  it("is unknown for a clip of one frame whatever was said", () => {
    expect(timeBaseOf({ frameTimesMs: [0], capturedFps: 240 }).kind).toBe("unknown");
  });

  it("ramps whatever was said, and says why no time is taken", () => {
    const frameTimesMs = timesOf([...repeat(4, 60), ...repeat(33, 120)]);
    expect(timeBaseOf({ frameTimesMs, capturedFps: 240 })).toMatchObject({
      kind: "ramped",
      why: expect.stringContaining("changes on the way"),
    });
  });
});

describe("a duration between two frames", () => {
  const at100 = timeBaseOf({ frameTimesMs: [0, 10, 20, 30], capturedFps: 100 });

  it("is the time between them, with half a frame of error at either end", () => {
    const duration = durationBetween(at100, [0, 10, 20, 30], 0, 3);
    expect(duration).toEqual({ frames: 3, ms: 30, errorMs: 10 });
  });

  it("runs backwards below nothing", () => {
    expect(durationBetween(at100, [0, 10, 20, 30], 3, 1)).toEqual({ frames: -2, ms: -20, errorMs: 10 });
  });

  it("takes the wider side's half where frames lie unevenly", () => {
    expect(durationBetween(at100, [0, 10, 30, 40], 1, 3)).toEqual({ frames: 2, ms: 30, errorMs: 15 });
  });

  it("has no time outside the table or without a true base, only frames", () => {
    const unknown = timeBaseOf({ frameTimesMs: [0, 10, 20], capturedFps: null });
    expect(durationBetween(at100, [0, 10, 20, 30], 0, 9)).toEqual({ frames: 9, ms: null, errorMs: null });
    expect(durationBetween(unknown, [0, 10, 20], 0, 2)).toEqual({ frames: 2, ms: null, errorMs: null });
  });

  it("gives true milliseconds for any stretch: as long as the frames lasted when they were recorded", () => {
    const cases = fc.record({
      capturedFps: fc.integer({ min: 60, max: 480 }),
      stretch: fc.integer({ min: 1, max: 16 }),
      from: fc.integer({ min: 0, max: 90 }),
      frames: fc.integer({ min: 0, max: 90 }),
    });
    fc.assert(
      fc.property(cases, ({ capturedFps, stretch, from, frames }) => {
        const frameTimesMs = evenly(capturedFps / stretch, 200);
        const base = timeBaseOf({ frameTimesMs, capturedFps });
        const duration = durationBetween(base, frameTimesMs, from, from + frames);
        expect(duration.ms).toBeCloseTo((frames * 1000) / capturedFps, 6);
        expect(duration.errorMs).toBeCloseTo(1000 / capturedFps, 6);
      }),
    );
  });

  it.each([
    [{ frames: 36, ms: 150, errorMs: 4.17 }, "0.150 s ± 0.004"],
    [{ frames: 9, ms: 150, errorMs: 16.7 }, "0.150 s ± 0.017"],
    [{ frames: 9, ms: 9, errorMs: 0.2 }, "0.009 s ± 0.001"],
    [{ frames: 36, ms: null, errorMs: null }, "36 frames"],
    [{ frames: 1, ms: null, errorMs: null }, "1 frame"],
    [{ frames: 0, ms: null, errorMs: null }, "0 frames"],
  ])("writes %o as %s", (duration, words) => {
    expect(durationInWords(duration)).toBe(words);
  });
});
