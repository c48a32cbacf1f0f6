import { describe, expect, it } from "vitest";
import {
  beginPlacing,
  goBack,
  goOn,
  isAllPlaced,
  movePlaced,
  nextAsked,
  nextFrame,
  nudge,
  type Placing,
  placeNext,
  takeNextInHand,
} from "@/components/measures/placing";
import { placingSentence } from "@/components/measures/placing-words";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";

const PICTURE = { widthPx: 1280, heightPx: 720 };
const KNEE = beginPlacing(MEASURES.front_knee_flexion.points, { here: 142 });
const TRAVEL = beginPlacing(MEASURES.head_travel.points, { here: 142 });

const at = (x: number, y: number) => ({ x, y });
const placedOn = (placing: Placing, frame: number, ...places: { x: number; y: number }[]) =>
  places.reduce((now, place) => placeNext(now, place, frame), placing);

describe("placing points one after another", () => {
  it("asks for each by its name and is done with the last", () => {
    const two = placedOn(KNEE, 142, at(600, 300), at(640, 380));
    expect(nextAsked(two)?.name).toBe("front ankle");
    expect(placingSentence(KNEE, 142)).toBe("Place: front hip.");
    expect(placingSentence(two, 142)).toBe("Then: front ankle.");
    const all = placeNext(two, at(660, 470), 142);
    expect(isAllPlaced(all)).toBe(true);
    expect(all.placed.map((point) => point.frame)).toEqual([142, 142, 142]);
    expect(placeNext(all, at(1, 1), 142)).toBe(all);
  });

  it("places no point of the measured frame on another one, and says which frame it is", () => {
    expect(placeNext(KNEE, at(1, 1), 141)).toBe(KNEE);
    expect(placingSentence(KNEE, 141)).toBe("On frame 143: front hip.");
  });

  it("looks for a frame to stand straight on, then holds the others to it", () => {
    expect(nextFrame(TRAVEL)).toBeNull();
    expect(placingSentence(TRAVEL, 142)).toContain("stand straight");
    const one = placeNext(TRAVEL, at(600, 100), 3);
    expect(nextFrame(one)).toBe(3);
    expect(placeNext(one, at(600, 500), 4)).toBe(one);
  });

  it("compares only with a moment before the one that is measured", () => {
    const standing = placedOn(TRAVEL, 3, at(600, 100), at(600, 500));
    expect(placeNext(standing, at(600, 120), 142)).toBe(standing);
    expect(placingSentence(standing, 142)).toContain("before the frame that is measured");
    expect(nextFrame(placeNext(standing, at(600, 120), 80))).toBe(142);
  });

  it("gives the keys to the clip while a frame is looked for, and to the point just placed otherwise", () => {
    expect(placedOn(TRAVEL, 3, at(600, 100), at(600, 500)).selected).toBeNull();
    expect(placedOn(KNEE, 142, at(600, 300)).selected).toBe(0);
  });

  it("moves the selected point by single source pixels and never off the picture", () => {
    const placed = placedOn(KNEE, 142, at(1279.5, 300));
    expect(nudge(placed, -1, 0, PICTURE).placed[0]).toEqual({ frame: 142, x: 1278.5, y: 300 });
    expect(nudge(placed, 10, 0, PICTURE).placed[0]).toEqual({ frame: 142, x: 1280, y: 300 });
  });

  it("moves the cross in place of any point while there is one", () => {
    const crossed = takeNextInHand(placedOn(KNEE, 142, at(10, 10)), at(20, 20));
    const moved = nudge(crossed, 1, -10, PICTURE);
    expect(moved.cross).toEqual(at(21, 10));
    expect(moved.placed[0]).toEqual({ frame: 142, x: 10, y: 10 });
  });

  it("goes back a point and on again, to the very place", () => {
    const two = placedOn(KNEE, 142, at(600, 300), at(640, 380));
    const back = goBack(two);
    expect(back.placed).toHaveLength(1);
    expect(back.cross).toEqual(at(640, 380));
    expect(goOn(back).placed).toEqual(two.placed);
    expect(goOn(two)).toBe(two);
  });

  it("lets the frame go with its last point, but not a frame that was given", () => {
    expect(nextFrame(goBack(placeNext(TRAVEL, at(600, 100), 3)))).toBeNull();
    expect(nextFrame(goBack(placeNext(KNEE, at(600, 100), 142)))).toBe(142);
  });

  it("forgets what was gone back on once another point is placed", () => {
    const other = placeNext(goBack(placedOn(KNEE, 142, at(600, 300))), at(5, 5), 142);
    expect(goOn(other)).toBe(other);
  });

  it("takes points that are there already, on their frames", () => {
    const standing = [
      { frame: 3, ...at(600, 100) },
      { frame: 3, ...at(600, 500) },
    ];
    const reused = beginPlacing(MEASURES.stride_length.points, { here: 142 }, standing);
    expect(nextAsked(reused)?.name).toBe("ankle on the rubber");
    expect(nextFrame(reused)).toBe(3);
  });

  it("moves a placed point on its own frame", () => {
    const moved = movePlaced(placedOn(KNEE, 142, at(1, 1), at(2, 2)), 0, at(7, 8));
    expect(moved.placed[0]).toEqual({ frame: 142, x: 7, y: 8 });
    expect(moved.selected).toBe(0);
  });
});
