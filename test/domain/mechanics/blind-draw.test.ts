import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BlindFrame, drawBlindFrames } from "@/server/domain/mechanics/blind-draw";
import { blindPool, poolCounts, type SeenFrames } from "@/server/domain/mechanics/blind-pool";
import { grouped } from "@/server/domain/mechanics/grouped";

const frameOf = (at: Partial<BlindFrame>): BlindFrame => ({
  ...{ athleteId: "ann", coachId: "ada", checkpointId: "knee", clipId: "c1", frame: 1 },
  ...{ view: "open_side", kind: "judgement" },
  ...at,
});
const timesOf = (frames: readonly BlindFrame[], key: "athleteId" | "coachId" | "checkpointId") =>
  grouped(frames, (each) => each[key]).map((group) => group.length);

describe("drawing a blind set", () => {
  const many = Array.from({ length: 60 }, (_, at) =>
    frameOf({ athleteId: at < 40 ? "ann" : `of ${at % 5}`, coachId: `coach ${at % 3}`, frame: at }),
  );

  it("draws the same set from one seed, and another from another", () => {
    const [one, same, other] = ["s1", "s1", "s2"].map((seed) => drawBlindFrames(many, 12, seed));
    expect(one).toEqual(same);
    expect(one).not.toEqual(other);
  });

  it("fills no set with the athlete who has most of the frames", () => {
    const drawn = drawBlindFrames(many, 12, "spread");
    expect(timesOf(drawn, "athleteId")).toEqual([2, 2, 2, 2, 2, 2]);
  });

  it("of one athlete spreads over coaches, then over checkpoints", () => {
    const pool = Array.from({ length: 24 }, (_, at) =>
      frameOf({ coachId: `coach ${at % 2}`, checkpointId: `point ${at % 3}`, frame: at }),
    );
    const drawn = drawBlindFrames(pool, 6, "one athlete");
    expect(timesOf(drawn, "coachId")).toEqual([3, 3]);
    expect(timesOf(drawn, "checkpointId")).toEqual([2, 2, 2]);
  });

  it("draws no frame twice, as many as are asked for or there are, each of the pool", () => {
    const pools = fc.array(
      fc.record({ athlete: fc.integer({ min: 0, max: 4 }), coach: fc.integer({ min: 0, max: 2 }) }),
      { maxLength: 50 },
    );
    fc.assert(
      fc.property(pools, fc.integer({ min: 0, max: 40 }), fc.string(), (rows, count, seed) => {
        const pool = rows.map(({ athlete, coach }, frame) =>
          frameOf({ athleteId: `${athlete}`, coachId: `${coach}`, frame }),
        );
        const drawn = drawBlindFrames(pool, count, seed);
        expect(drawn).toHaveLength(Math.min(count, pool.length));
        expect(new Set(drawn).size).toBe(drawn.length);
        for (const each of drawn) expect(pool).toContain(each);
      }),
    );
  });
});

describe("the frames there are to draw from", () => {
  const at = { athleteId: "ann", coachId: "ada", frame: 7 };
  const seen: SeenFrames = {
    marked: [
      { ...at, clipId: "side", view: "open_side", event: "front_foot_contact" },
      { ...at, clipId: "front", view: "front", event: "front_foot_contact" },
      { ...at, clipId: "side", view: "open_side", event: "ball_release" },
    ],
    measured: [
      { ...at, clipId: "side", view: "open_side", kind: "front_knee_flexion", checkpointId: "knee" },
      { ...at, clipId: "front", view: "front", kind: "front_knee_flexion", checkpointId: "knee" },
      { ...at, clipId: "side", view: "open_side", kind: "stride_length", checkpointId: "stride" },
    ],
  };
  const knee = {
    id: "knee",
    event: "front_foot_contact",
    views: ["open_side"],
    measure: "front_knee_flexion",
  } as const;

  it("are to be judged those on which its moment is marked, from a view it can be judged from", () => {
    const views = [...knee.views];
    expect(blindPool("judge", { ...knee, views }, seen)).toEqual([
      { ...at, clipId: "side", view: "open_side", checkpointId: "knee", kind: "judgement" },
    ]);
  });

  it("are to be measured those on which its own measure was taken, from a view that can show it", () => {
    expect(blindPool("measure", { ...knee, views: [] }, seen)).toEqual([seen.measured[0]]);
    expect(blindPool("measure", { ...knee, measure: null, views: [] }, seen)).toEqual([]);
  });

  it("are counted by checkpoint and view, both ways; none is not a count", () => {
    const views = [...knee.views];
    const none = { id: "none", event: "finish", views, measure: null } as const;
    expect(
      poolCounts(
        [
          { ...knee, views },
          { ...none, views },
        ],
        seen,
      ),
    ).toEqual([
      { way: "judge", checkpointId: "knee", view: "open_side", frames: 1 },
      { way: "measure", checkpointId: "knee", view: "open_side", frames: 1 },
    ]);
  });
});
