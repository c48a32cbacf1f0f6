import { describe, expect, it } from "vitest";
import {
  type FirstMeasure,
  framesOf,
  mayWithdraw,
  repeatedOn,
} from "@/server/domain/mechanics/measure-again";
import { finish, knee, spread } from "../../helpers/measures";

const first = (changes: Partial<FirstMeasure> = {}): FirstMeasure => ({ ...knee(), ...changes });
const anew = [
  { x: 1, y: 2 },
  { x: 3, y: 4 },
  { x: 5, y: 6 },
];

describe("a measure taken a second time", () => {
  it("shows of the first only the frames its points lie on", () => {
    expect(framesOf(first())).toEqual({ here: 108 });
    expect(framesOf(spread("stride_length", "side", 100))).toEqual({ here: 100, standing: 40 });
    expect(framesOf(spread("head_travel", "side", 100))).toEqual({ here: 100, standing: 40, before: 40 });
  });

  it("lies on the frames of the first, whatever was placed where", () => {
    const again = repeatedOn(first(), { points: anew, untilFrame: 170 });
    expect(again).toMatchObject({
      clipId: "side",
      checkpointId: "front-knee-bent",
      frame: 108,
      untilFrame: null,
    });
    expect(again?.points).toEqual(anew.map((point) => ({ frame: 108, ...point })));
  });

  it("has a last frame of its own only for a held finish", () => {
    expect(repeatedOn(finish(), { points: [], untilFrame: 160 })?.untilFrame).toBe(160);
  });

  it("is none without all its points", () => {
    expect(repeatedOn(first(), { points: anew.slice(1), untilFrame: null })).toBeNull();
  });
});

describe("a request for a second measure", () => {
  const request = { askedByPersonId: "ada" };

  it.each([
    ["who asked", "ada", ["coach"], true],
    ["another coach", "ben", ["coach"], false],
    ["an admin", "ben", ["admin"], true],
    ["nobody of the staff", "ben", [], false],
  ] as const)("is taken back by %s: %s", (_, personId, roles, may) => {
    expect(mayWithdraw(request, { personId, roles })).toBe(may);
  });
});
