import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  clampFrame,
  followFrame,
  frameAt,
  SEEK_PARTS,
  secondsInWords,
  seekTargetMs,
} from "@/components/clips/frame-table";

/** Any table of 1 to 200 frames: variable rates and slow-motion ramps included, never two closer than half a ms. */
const tables = fc
  .array(fc.double({ min: 0.5, max: 120, noNaN: true }), { minLength: 1, maxLength: 200 })
  .map((steps) => {
    let at = 0;
    return steps.map((step) => {
      const timeMs = at;
      at += step;
      return timeMs;
    });
  });

describe("frameAt", () => {
  const times = [0, 16.667, 33.333, 50];

  it.each([
    ["before the first frame", -5, 0],
    ["on the first", 0, 0],
    ["between two", 20, 1],
    ["just before one, as browsers round", 33.26, 2],
    ["well before one", 33.2, 1],
    ["on the last", 50, 3],
    ["after the last", 9999, 3],
  ])("%s", (_where, timeMs, frame) => {
    expect(frameAt(times, timeMs)).toBe(frame);
  });

  it("gives 0 for an empty table", () => {
    expect(frameAt([], 10)).toBe(0);
  });

  it("agrees with a plain walk over the table", () => {
    fc.assert(
      fc.property(tables, fc.double({ min: -10, max: 30_000, noNaN: true }), (table, timeMs) => {
        let slow = 0;
        for (const [index, each] of table.entries()) if (each <= timeMs + 0.1) slow = index;
        expect(frameAt(table, timeMs)).toBe(slow);
      }),
    );
  });
});

describe("seekTargetMs", () => {
  it("lies in the frame asked for, for every part tried and every frame of any table", () => {
    fc.assert(
      fc.property(tables, (table) => {
        const durationMs = (table.at(-1) ?? 0) + 8;
        for (const frame of table.keys()) {
          for (const part of SEEK_PARTS) {
            expect(frameAt(table, seekTargetMs(table, frame, part, durationMs))).toBe(frame);
          }
        }
      }),
    );
  });

  it("is the middle between a frame and the next", () => {
    expect(seekTargetMs([0, 10, 30], 1, 0.5, 40)).toBe(20);
  });

  it("stays in the last frame also when the length is unknown or shorter than the table", () => {
    for (const durationMs of [Number.NaN, Number.POSITIVE_INFINITY, 0]) {
      expect(seekTargetMs([0, 10, 20], 2, 0.5, durationMs)).toBe(25);
    }
  });
});

describe("followFrame", () => {
  it("keeps two clips of one rate as many frames apart", () => {
    const table = Array.from({ length: 100 }, (_, frame) => (frame * 1000) / 60);
    for (const leader of [30, 40, 55, 99]) {
      expect(followFrame({ leader: 40, follower: 20 }, table, table, leader)).toBe(leader - 20);
    }
  });

  it("goes by time when the rates differ", () => {
    expect(followFrame({ leader: 3, follower: 1 }, [0, 10, 20, 30, 40], [0, 20, 40], 4)).toBe(1);
    expect(followFrame({ leader: 2, follower: 1 }, [0, 10, 20, 30, 40], [0, 20, 40], 4)).toBe(2);
  });

  it("takes the nearest frame, so that a table of whole milliseconds goes along frame by frame", () => {
    const exact = Array.from({ length: 180 }, (_, frame) => (frame * 1000) / 60);
    const whole = exact.map(Math.round);
    for (const frame of exact.keys()) {
      expect(followFrame({ leader: 0, follower: 0 }, exact, whole, frame)).toBe(frame);
      expect(followFrame({ leader: 7, follower: 7 }, whole, exact, frame)).toBe(frame);
    }
  });

  it("is never farther off in time than half the follower's frame and what a container rounds to", () => {
    fc.assert(
      fc.property(tables, tables, fc.nat(), (leader, follower, pick) => {
        const frame = pick % leader.length;
        const chosen = followFrame({ leader: 0, follower: 0 }, leader, follower, frame);
        const off = (at: number) => Math.abs((follower[at] ?? Number.NaN) - (leader[frame] ?? Number.NaN));
        const nearest = Math.min(...follower.map((_time, at) => off(at)));
        expect(off(chosen)).toBeLessThanOrEqual(nearest + 1 + 1e-9);
      }),
    );
  });

  it("stops at the ends of the second clip", () => {
    expect(followFrame({ leader: 4, follower: 1 }, [0, 10, 20, 30, 40], [0, 10, 20], 0)).toBe(0);
    expect(followFrame({ leader: 0, follower: 1 }, [0, 10, 20, 30, 40], [0, 10, 20], 4)).toBe(2);
  });
});

describe("clampFrame and secondsInWords", () => {
  it("keep a frame within the table", () => {
    expect([-3, 0, 2.4, 9].map((frame) => clampFrame([0, 1, 2, 3], frame))).toEqual([0, 0, 2, 3]);
    expect(clampFrame([], 4)).toBe(0);
  });

  it("write a time to the millisecond, never below zero", () => {
    expect(secondsInWords(612.3)).toBe("0.612 s");
    expect(secondsInWords(-1)).toBe("0.000 s");
  });
});
