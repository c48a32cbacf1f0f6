import { describe, expect, it } from "vitest";
import { CAMERA_VIEWS } from "@/server/domain/mechanics/delivery";
import { canBeMeasuredFrom, MEASURE_KINDS, MEASURES } from "@/server/domain/mechanics/measure-kind";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";

describe("canBeMeasuredFrom", () => {
  it("lets the knee be measured from a side and refuses it from the front", () => {
    expect(canBeMeasuredFrom("front_knee_flexion", "open_side")).toBe(true);
    expect(canBeMeasuredFrom("front_knee_flexion", "closed_side")).toBe(true);
    expect(canBeMeasuredFrom("front_knee_flexion", "front")).toBe(false);
    expect(canBeMeasuredFrom("shoulder_tilt", "back")).toBe(true);
    expect(canBeMeasuredFrom("shoulder_tilt", "open_side")).toBe(false);
  });

  it("refuses everything where nobody has said where the camera stood", () => {
    for (const kind of MEASURE_KINDS) expect(canBeMeasuredFrom(kind, null), kind).toBe(false);
  });

  it("measures no rotation of the arm, from any view", () => {
    for (const kind of MEASURE_KINDS) expect(MEASURES[kind].words).not.toMatch(/rotation|external|arm/i);
  });
});

it("every checkpoint with a measure can be judged from a view the measure may be taken from", () => {
  for (const { id, measure, views } of STARTING_LIBRARY) {
    if (measure === null) continue;
    expect(
      views.some((view) => canBeMeasuredFrom(measure, view)),
      id,
    ).toBe(true);
  }
  expect(CAMERA_VIEWS).toHaveLength(4);
});
