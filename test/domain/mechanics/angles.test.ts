import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  flexionDeg,
  includedAngleDeg,
  leanDeg,
  type Place,
  riseDeg,
  shareAlong,
} from "@/server/domain/mechanics/angles";

type Row = {
  near: [number, number];
  joint: [number, number];
  far: [number, number];
  included_deg: number;
  flexion_deg: number;
};
const reference = JSON.parse(readFileSync("test/reference/kinematics.json", "utf8"));
const rows: Row[] = reference.angle_tests.rows;

const place = ([x, y]: readonly [number, number]): Place => ({ x, y });

describe("the angle of a joint", () => {
  it.each(rows)("is $included_deg degrees between $near, $joint and $far, as worked by hand", (row) => {
    const joint = [place(row.near), place(row.joint), place(row.far)] as const;
    expect(includedAngleDeg(...joint)).toBeCloseTo(row.included_deg, 5);
    expect(flexionDeg(...joint)).toBeCloseTo(row.flexion_deg, 5);
  });

  const px = fc.double({ min: -4000, max: 4000, noNaN: true });
  const somewhere = fc.record({ x: px, y: px });
  const joints = fc
    .tuple(somewhere, somewhere, somewhere)
    .filter(([near, joint, far]) =>
      [near, far].every((end) => Math.hypot(end.x - joint.x, end.y - joint.y) > 1),
    );

  it("stays as it is however the picture is turned, mirrored, scaled and moved", () => {
    fc.assert(
      fc.property(
        joints,
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.boolean(),
        somewhere,
        (three, turn, scale, isMirrored, by) => {
          const moved = three.map(({ x, y }) => ({
            x: by.x + scale * ((isMirrored ? -x : x) * Math.cos(turn) - y * Math.sin(turn)),
            y: by.y + scale * ((isMirrored ? -x : x) * Math.sin(turn) + y * Math.cos(turn)),
          })) as [Place, Place, Place];
          expect(includedAngleDeg(...moved)).toBeCloseTo(includedAngleDeg(...three), 4);
        },
      ),
    );
  });

  it("is the same from either end, and its bend makes it up to 180", () => {
    fc.assert(
      fc.property(joints, ([near, joint, far]) => {
        expect(includedAngleDeg(far, joint, near)).toBeCloseTo(includedAngleDeg(near, joint, far), 9);
        expect(flexionDeg(near, joint, far) + includedAngleDeg(near, joint, far)).toBeCloseTo(180, 9);
      }),
    );
  });

  it("changes when only the width is stretched: pixels must be square", () => {
    const wide = rows.map(({ near, joint, far }) =>
      includedAngleDeg(...([near, joint, far].map(([x, y]) => ({ x: x * 2, y })) as [Place, Place, Place])),
    );
    expect(wide[3]).not.toBeCloseTo(rows[3]?.included_deg ?? 0, 0);
  });
});

describe("a line against upright and level", () => {
  it.each([
    ["upright", [50, 100], [50, 20], 0],
    ["leaning to the right", [50, 100], [90, 60], 45],
    ["leaning to the left", [50, 100], [10, 60], -45],
    ["lying to the right", [50, 100], [90, 100], 90],
    ["head below foot", [50, 60], [90, 100], 135],
  ] as const)("leans as it should: %s", (_, lower, upper, deg) => {
    expect(leanDeg(place(lower), place(upper))).toBeCloseTo(deg, 9);
  });

  it.each([
    ["level", [0, 40], [80, 40], 0],
    ["rising to the right", [0, 40], [40, 0], 45],
    ["rising to the left", [40, 40], [0, 0], 45],
    ["falling to the left", [40, 0], [0, 40], -45],
  ] as const)("rises as it should: %s", (_, from, to, deg) => {
    expect(riseDeg(place(from), place(to))).toBeCloseTo(deg, 9);
  });

  it("finds a place along a way however it runs", () => {
    expect(shareAlong({ x: 5, y: 30 }, { x: 0, y: 0 }, { x: 10, y: 0 })).toBeCloseTo(0.5, 9);
    expect(shareAlong({ x: 0, y: 0 }, { x: 4, y: 4 }, { x: 8, y: 8 })).toBeCloseTo(-1, 9);
    expect(shareAlong({ x: 1, y: 1 }, { x: 4, y: 4 }, { x: 4, y: 4 })).toBeNaN();
  });

  /* A line of at least 100 px at any angle; its ends each move by up to a pixel, which turns it by asin(2 / 100) at most. */
  const MOST_DEG = 1.2;
  const nudge = fc.record({
    x: fc.double({ min: -0.7, max: 0.7, noNaN: true }),
    y: fc.double({ min: -0.7, max: 0.7, noNaN: true }),
  });
  const line = (from: number, to: number) =>
    fc.record({
      turned: fc.oneof(
        fc.double({ min: from, max: to, noNaN: true }),
        fc.constantFrom(
          ...[-180, -179.9, -90.1, -90, -89.9, -0.1, 0, 0.1, 89.9, 90, 90.1, 179.9, 180].filter(
            (deg) => deg >= from && deg <= to,
          ),
        ),
      ),
      long: fc.double({ min: 100, max: 900, noNaN: true }),
    });
  const endOf = ({ turned, long }: { turned: number; long: number }): Place => ({
    x: long * Math.sin((turned * Math.PI) / 180),
    y: -long * Math.cos((turned * Math.PI) / 180),
  });
  const moved = (at: Place, by: Place): Place => ({ x: at.x + by.x, y: at.y + by.y });

  it("rises hardly otherwise when its places hardly move, at every angle, standing on end and turned about", () => {
    fc.assert(
      fc.property(line(-180, 180), nudge, nudge, (way, first, second) => {
        const [from, to] = [{ x: 0, y: 0 }, endOf(way)];
        const before = riseDeg(from, to);
        expect(Math.abs(riseDeg(moved(from, first), moved(to, second)) - before)).toBeLessThan(MOST_DEG);
        expect(riseDeg({ x: -from.x, y: from.y }, { x: -to.x, y: to.y })).toBeCloseTo(before, 6);
        expect(riseDeg(to, from)).toBeCloseTo(-before, 6);
        expect(Math.abs(before)).toBeLessThanOrEqual(90);
      }),
    );
  });

  it("leans hardly otherwise when its places hardly move, short of hanging straight down", () => {
    fc.assert(
      fc.property(line(-178, 178), nudge, nudge, (way, first, second) => {
        const [lower, upper] = [{ x: 0, y: 0 }, endOf(way)];
        const before = leanDeg(lower, upper);
        expect(before).toBeCloseTo(way.turned, 6);
        expect(Math.abs(leanDeg(moved(lower, first), moved(upper, second)) - before)).toBeLessThan(MOST_DEG);
        expect(leanDeg(lower, { x: -upper.x, y: upper.y })).toBeCloseTo(-before, 6);
      }),
    );
  });
});
