import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mostFrames, nextRun, type WindowState, windowSpan } from "@/components/clips/stage/window-plan";

const state = (change: Partial<WindowState>): WindowState => ({
  ...{ playhead: 50, direction: 1, most: 30, count: 200, isHeld: () => false },
  ...change,
});
const held = (...spans: [number, number][]) => ({
  isHeld: (frame: number) => spans.some(([from, to]) => frame >= from && frame < to),
});

/** Decodes run after run until there is none. */
function fillAll(now: WindowState, frames: Set<number>): void {
  let runs = 0;
  for (let run = nextRun(now); run; run = nextRun(now)) {
    for (let frame = run.from; frame < run.to; frame += 1) frames.add(frame);
    runs += 1;
    expect(runs).toBeLessThan(100);
  }
}

describe("how many pictures are held", () => {
  it.each([
    ["a phone's usual film", 1280, 720, 1.5, 8, 60],
    ["full size, decoded", 1920, 1080, 1.5, undefined, 51],
    ["full size as bitmaps", 1920, 1080, 4, 8, 19],
    ["full size on a small device", 1920, 1080, 1.5, 4, 25],
    ["four times full size as bitmaps", 3840, 2160, 4, 8, 4],
  ])("stays within the memory allowed: %s", (_name, widthPx, heightPx, bytes, deviceGb, most) => {
    expect(mostFrames({ widthPx, heightPx }, bytes, deviceGb)).toBe(most);
  });
});

describe("the frames worth holding", () => {
  it.each([
    ["going on, two thirds lie ahead", {}, { from: 40, to: 70 }],
    ["going back, two thirds lie behind", { direction: -1 as const }, { from: 31, to: 61 }],
    ["at the start, all lie ahead", { playhead: 0 }, { from: 0, to: 30 }],
    ["at the end, all lie behind", { playhead: 199 }, { from: 170, to: 200 }],
    ["a short clip is held whole", { count: 12, playhead: 5 }, { from: 0, to: 12 }],
    [
      "a run that is to be held whole is all",
      { playhead: 5, whole: { from: 60, to: 80 } },
      { from: 60, to: 80 },
    ],
  ])("%s", (_name, change, span) => {
    expect(windowSpan(state(change))).toEqual(span);
  });

  it("are never more than may be held, and always have the picture among them", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 4, max: 60 }),
        fc.nat(),
        fc.boolean(),
        (count, most, at, isOn) => {
          const playhead = at % count;
          const { from, to } = windowSpan({ playhead, direction: isOn ? 1 : -1, most, count });
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThanOrEqual(count);
          expect(to - from).toBe(Math.min(most, count));
          expect(playhead >= from && playhead < to).toBe(true);
        },
      ),
    );
  });
});

describe("what is decoded next", () => {
  it.each([
    ["nothing is held: the picture and what follows", {}, { from: 50, to: 70 }],
    ["nothing is held, going back: the picture first", { direction: -1 as const }, { from: 35, to: 51 }],
    ["the picture is held: what follows it", held([40, 52]), { from: 52, to: 70 }],
    ["what follows is held: what lies behind", held([50, 70]), { from: 40, to: 50 }],
    ["one is missing next door", held([40, 51], [52, 70]), { from: 51, to: 52 }],
    ["a run is to be held whole: from its first", { whole: { from: 60, to: 80 } }, { from: 60, to: 80 }],
    [
      "a run is to be held whole, part of it is",
      { playhead: 75, whole: { from: 60, to: 80 }, ...held([60, 63], [70, 78]) },
      { from: 63, to: 70 },
    ],
    [
      "one far off is missing of a run that is to be held whole",
      { playhead: 5, whole: { from: 60, to: 80 }, ...held([60, 79]) },
      { from: 79, to: 80 },
    ],
    ["the clip's end is missing", { playhead: 180, ...held([170, 199]) }, { from: 199, to: 200 }],
  ])("%s", (_name, change, run) => {
    expect(nextRun(state(change))).toEqual(run);
  });

  it("leaves a few frames at the far end of the window until they are worth a start of the decoder", () => {
    expect(nextRun(state(held([40, 66])))).toBeNull();
  });

  it("gives nothing once a run that is to be held whole is", () => {
    expect(nextRun(state({ playhead: 5, whole: { from: 60, to: 80 }, ...held([60, 80]) }))).toBeNull();
  });

  it("gives nothing when all that is worth it is held", () => {
    expect(nextRun(state(held([40, 70])))).toBeNull();
  });

  it("comes to an end when each run is decoded, with the picture and its neighbours held", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 120 }),
        fc.nat(),
        fc.boolean(),
        fc.array(fc.nat({ max: 119 })),
        (count, at, isOn, before) => {
          const frames = new Set(before);
          const now = state({
            ...{ count, playhead: at % count, direction: isOn ? 1 : -1 },
            isHeld: (frame) => frames.has(frame),
          });
          fillAll(now, frames);
          const near = [now.playhead - 1, now.playhead, now.playhead + 1];
          expect(near.filter((each) => each >= 0 && each < count && !frames.has(each))).toEqual([]);
        },
      ),
    );
  });
});
