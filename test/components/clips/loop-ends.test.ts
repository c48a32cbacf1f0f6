import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { loopEnds } from "@/components/clips/loop-ends";
import { DELIVERY_EVENTS } from "@/server/domain/mechanics/delivery";

describe("the frames a loop may begin and end at", () => {
  it("are the clip's own ends and the marked moments", () => {
    expect(loopEnds({ peak_knee_height: 30, ball_release: 58 }, 89)).toEqual([
      { frame: 0, label: "Start of the clip" },
      { frame: 30, label: "Peak knee height" },
      { frame: 58, label: "Ball release" },
      { frame: 89, label: "End of the clip" },
    ]);
  });

  it("stand once for all that is on a frame", () => {
    expect(loopEnds({ first_movement: 0, ball_release: 40, finish: 40 }, 89)).toEqual([
      { frame: 0, label: "Start of the clip, First movement" },
      { frame: 40, label: "Ball release, Finish" },
      { frame: 89, label: "End of the clip" },
    ]);
  });

  it("are never the same twice, and name every moment, whatever is marked", () => {
    const frame = fc.option(fc.integer({ min: 0, max: 6 }), { nil: undefined });
    const marked = fc.tuple(...DELIVERY_EVENTS.map(() => frame));
    fc.assert(
      fc.property(marked, fc.integer({ min: 0, max: 6 }), (frames, last) => {
        const marks = Object.fromEntries(DELIVERY_EVENTS.map((event, at) => [event, frames[at]]));
        const ends = loopEnds(marks, last);
        expect(new Set(ends.map((each) => each.frame)).size).toBe(ends.length);
        const named = frames.filter((each) => each !== undefined).length + 2;
        expect(ends.flatMap(({ label }) => label.split(", "))).toHaveLength(named);
      }),
    );
  });
});
