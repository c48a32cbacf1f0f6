import { describe, expect, it } from "vitest";
import { canBeJudgedFrom, checkpointSchema, inDeliveryOrder } from "@/server/domain/mechanics/checkpoint";
import {
  CAMERA_VIEWS,
  DELIVERY_PHASES,
  EVENT_THAT_OPENS,
  eventOrder,
  phaseOrder,
} from "@/server/domain/mechanics/delivery";
import { DAVIS_2009 } from "@/server/domain/mechanics/source-names";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import means from "../../reference/delivery-means.json";

describe("the starting library", () => {
  it("holds about two dozen checkpoints, each whole, with an id and a name of its own", () => {
    expect(STARTING_LIBRARY.length).toBeGreaterThanOrEqual(22);
    expect(STARTING_LIBRARY.length).toBeLessThanOrEqual(28);
    for (const checkpoint of STARTING_LIBRARY) expect(checkpointSchema.parse(checkpoint)).toEqual(checkpoint);
    expect(new Set(STARTING_LIBRARY.map(({ id }) => id)).size).toBe(STARTING_LIBRARY.length);
    expect(new Set(STARTING_LIBRARY.map(({ name }) => name)).size).toBe(STARTING_LIBRARY.length);
  });

  it("offers two or three cues and one to three drills for each", () => {
    for (const { id, cues, drills } of STARTING_LIBRARY) {
      expect([2, 3], id).toContain(cues.length);
      expect([1, 2, 3], id).toContain(drills.length);
    }
  });

  it("covers every phase, from every camera view, in the delivery's order", () => {
    expect(DELIVERY_PHASES.filter((phase) => !STARTING_LIBRARY.some((one) => one.phase === phase))).toEqual(
      [],
    );
    expect(
      CAMERA_VIEWS.filter((view) => !STARTING_LIBRARY.some((one) => canBeJudgedFrom(one, view))),
    ).toEqual([]);
    const order = STARTING_LIBRARY.map((one) => phaseOrder(one.phase) * 10 + eventOrder(one.event));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it("judges each checkpoint at an event that bounds its own phase", () => {
    for (const { id, phase, event } of STARTING_LIBRARY) {
      const opens = eventOrder(EVENT_THAT_OPENS[phase]);
      expect([opens, opens + 1], id).toContain(eventOrder(event));
    }
  });

  it("names no left and no right, so that a left-hander reads the same text", () => {
    for (const one of STARTING_LIBRARY) {
      const text = [one.name, one.absentLooksLike, one.clearLooksLike, ...one.cues, ...one.drills].join(" ");
      expect(text, one.id).not.toMatch(/\b(left|right)\b/i);
    }
  });

  // Davis et al. 2009: five checkpoints of video matched motion capture.
  it("cites Davis 2009 for its five checkpoints and for no other", () => {
    const cited = STARTING_LIBRARY.filter(({ source }) => source.includes(DAVIS_2009)).map(({ id }) => id);
    expect(cited.sort()).toEqual([
      "arm-up-in-time",
      "front-shoulder-closed",
      "hand-on-top",
      "hips-lead",
      "stride-direction",
    ]);
    expect(cited).toHaveLength(means.davis_2009.checkpoints);
  });

  // Kageyama et al. 2015, Tables 2 and 3; Diffendaffer et al. 2023, abstract.
  it.each([
    ["stride-length", "stride_length_pct_height"],
    ["front-knee-bent", "front_knee_flexion_contact_deg"],
    ["trunk-tilt-at-release", "trunk_tilt_release_deg"],
  ] as const)("gives for %s a range that holds the published means", (id, figure) => {
    const checkpoint = STARTING_LIBRARY.find((one) => one.id === id);
    expect(checkpoint?.source).toContain("Kageyama");
    const [low, high] = (/about (\d+) to (\d+)/.exec(checkpoint?.clearLooksLike ?? "") ?? [])
      .slice(1)
      .map(Number);
    const published = means.kageyama_2015[figure];
    for (const [mean] of [published.adolescent, published.collegiate]) {
      expect(Math.round(Number(mean))).toBeGreaterThanOrEqual(Number(low));
      expect(Math.round(Number(mean))).toBeLessThanOrEqual(Number(high));
    }
  });
});

describe("a checkpoint of the academy's own", () => {
  const whole = STARTING_LIBRARY[0];
  it.each([
    ["no name", { name: "  " }, "name"],
    ["a phase nobody knows", { phase: "windup" }, "phase"],
    ["no camera view", { views: [] }, "views"],
    ["a view twice", { views: ["front", "front"] }, "views"],
    ["seven cues", { cues: Array.from({ length: 7 }, () => "Stay tall") }, "cues"],
    ["an id with spaces", { id: "Front knee" }, "id"],
    ["no source", { source: "" }, "source"],
  ])("is refused with %s, naming the field", (_case, change, field) => {
    const result = checkpointSchema.safeParse({ ...whole, ...change });
    expect(result.success).toBe(false);
    expect(result.error?.issues.map((issue) => issue.path[0])).toEqual([field]);
  });

  it("is refused with a field that does not exist", () => {
    expect(checkpointSchema.safeParse({ ...whole, colour: "clay" }).success).toBe(false);
  });

  it("keeps the order it came in beside one of the same phase and event", () => {
    const same = { phase: "stride", event: "front_foot_contact" } as const;
    expect(inDeliveryOrder(same, same)).toBe(0);
    expect(inDeliveryOrder(same, { phase: "acceleration", event: "ball_release" })).toBeLessThan(0);
    expect(inDeliveryOrder(same, { phase: "stride", event: "peak_knee_height" })).toBeGreaterThan(0);
  });
});
