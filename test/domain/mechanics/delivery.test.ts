import { describe, expect, it } from "vitest";
import {
  CAMERA_VIEW_WORDS,
  CAMERA_VIEWS,
  DELIVERY_EVENTS,
  DELIVERY_PHASES,
  EVENT_THAT_OPENS,
  EVENT_WORDS,
  eventOrder,
  isApproximate,
  PHASE_WORDS,
  phaseOrder,
} from "@/server/domain/mechanics/delivery";
import { cameraPlace } from "@/server/domain/mechanics/handedness";
import { JUDGEMENT_WORDS, judgementScore, judgementWord } from "@/server/domain/mechanics/judgement";

describe("the parts of a delivery", () => {
  // Phases and the events that bound them: Fleisig 2013; Diffendaffer et al. 2023.
  it("runs from the wind-up to the follow-through in the order the research names", () => {
    expect(DELIVERY_PHASES.map((phase) => PHASE_WORDS[phase])).toEqual([
      "Wind-up",
      "Stride",
      "Arm cocking",
      "Acceleration",
      "Deceleration",
      "Follow-through",
    ]);
    expect(DELIVERY_PHASES.map(phaseOrder)).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it("opens each phase at the event that begins it, so that going down the outline never goes back in the clip", () => {
    const opened = DELIVERY_PHASES.map((phase) => eventOrder(EVENT_THAT_OPENS[phase]));
    expect(opened).toEqual([0, 1, 2, 3, 4, 5]);
    expect(EVENT_THAT_OPENS.acceleration).toBe("max_external_rotation");
  });

  it("treats only maximum external rotation as approximate", () => {
    expect(DELIVERY_EVENTS.filter(isApproximate)).toEqual(["max_external_rotation"]);
  });

  it("gives every event and every camera view words of its own", () => {
    expect(new Set(DELIVERY_EVENTS.map((event) => EVENT_WORDS[event])).size).toBe(DELIVERY_EVENTS.length);
    expect(new Set(CAMERA_VIEWS.map((view) => CAMERA_VIEW_WORDS[view])).size).toBe(CAMERA_VIEWS.length);
  });
});

describe("where the camera stands", () => {
  // From the rubber, third base is to the left of the line to the plate: a right-hander turns the chest that way.
  it.each([
    ["right", "open_side", "the third-base side"],
    ["right", "closed_side", "the first-base side"],
    ["left", "open_side", "the first-base side"],
    ["left", "closed_side", "the third-base side"],
    ["right", "front", "behind a screen at the plate"],
    ["left", "back", "behind the mound"],
  ] as const)("for a %s-hander's %s view is %s", (throws, view, place) => {
    expect(cameraPlace(throws, view)).toBe(place);
  });
});

describe("the scale of a judgement", () => {
  it("goes from 0 absent to 3 clear in four words", () => {
    expect([0, 1, 2, 3].map((score) => judgementWord(judgementScore.parse(score)))).toEqual([
      ...JUDGEMENT_WORDS,
    ]);
    expect(judgementWord(2)).toBe("mostly");
  });

  it.each([-1, 4, 1.5, "2", null])("refuses %s and says what a judgement is", (score) => {
    const result = judgementScore.safeParse(score);
    expect(result.success).toBe(false);
    expect(result.error?.issues[0]?.message).toContain("0 absent");
  });
});
