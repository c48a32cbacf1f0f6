import { describe, expect, it } from "vitest";
import { keptStroke } from "@/components/marks/stroke-points";
import { DRAFT_LIMITS } from "@/server/domain/reviews/draft";

describe("a stroke of the pencil as it is kept", () => {
  it("keeps its two ends and leaves out points that are nearer than a step", () => {
    const line = Array.from({ length: 11 }, (_, x) => ({ x, y: 0 }));
    expect(keptStroke(line, 4).map((point) => point.x)).toEqual([0, 4, 8, 10]);
  });

  it("is kept to a tenth of a pixel", () => {
    expect(
      keptStroke(
        [
          { x: 1.234, y: 5.678 },
          { x: 9, y: 9.96 },
        ],
        0,
      ),
    ).toEqual([
      { x: 1.2, y: 5.7 },
      { x: 9, y: 10 },
    ]);
  });

  it("never holds more points than a draft may, and still ends where it ended", () => {
    const long = Array.from({ length: 5000 }, (_, x) => ({ x, y: x % 7 }));
    const kept = keptStroke(long, 1);
    expect(kept).toHaveLength(DRAFT_LIMITS.strokePoints);
    expect(kept.at(-1)).toEqual(long.at(-1));
  });

  it("of no points is none", () => {
    expect(keptStroke([], 1)).toEqual([]);
  });
});
