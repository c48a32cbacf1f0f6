import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stepsHeld } from "@/components/clips/stage/hold";
import { loopAround } from "@/components/clips/stage/loop-span";

describe("a step that is held", () => {
  it.each([
    ["a press", 0, 1],
    ["a press of a third of a second", 340, 1],
    ["half a second more", 850, 7],
    ["two and a half seconds more: as fast as it gets", 2850, 86],
    ["a second more at full speed", 3850, 146],
  ])("has done: %s", (_name, heldMs, steps) => {
    expect(stepsHeld(heldMs)).toBe(steps);
  });

  it("never goes back, and is never slower than it was", () => {
    const ms = fc.integer({ min: 400, max: 20_000 });
    fc.assert(
      fc.property(ms, ms, (one, other) => {
        const [early, late] = [Math.min(one, other), Math.max(one, other)];
        const inTheNextSecond = (from: number) => stepsHeld(from + 1000) - stepsHeld(from);
        expect(stepsHeld(late)).toBeGreaterThanOrEqual(stepsHeld(early));
        expect(inTheNextSecond(late)).toBeGreaterThanOrEqual(inTheNextSecond(early) - 1);
      }),
    );
  });
});

describe("what is played over and over", () => {
  it.each([
    ["between two moments", [20, 50, 80], 30, { from: 20, to: 50 }],
    ["on a moment: to the next", [20, 50, 80], 50, { from: 50, to: 80 }],
    ["before the first moment: from the start", [20, 50], 10, { from: 0, to: 20 }],
    ["after the last moment: to the end", [20, 50], 60, { from: 50, to: 99 }],
    ["nothing is marked: the whole clip", [], 60, { from: 0, to: 99 }],
    ["a moment on the very end", [99], 99, { from: 0, to: 99 }],
  ])("%s", (_name, marks, frame, span) => {
    expect(loopAround(marks, frame, 100)).toEqual(span);
  });
});
