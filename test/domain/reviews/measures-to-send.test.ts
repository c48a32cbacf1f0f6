import { describe, expect, it } from "vitest";
import { misfits } from "@/server/domain/reviews/checkpoint-fit";
import {
  type MeasurableClip,
  measuresMissing,
  measuresToSend,
} from "@/server/domain/reviews/measures-to-send";
import { missingToSend, missingToSettle } from "@/server/domain/reviews/readiness";
import { finish, knee, levelMark, noteMark } from "../../helpers/measures";
import { check, keep, review } from "../../helpers/review-drafts";

const frameTimesMs = Array.from({ length: 180 }, (_, frame) => (frame * 1000) / 60);
const side: MeasurableClip = {
  ...{ id: "side", view: "open_side", pitchType: "fastball", capturedFps: 240, frameTimesMs },
};
const facts = (changes: Partial<MeasurableClip> = {}) => ({
  throws: "right" as const,
  clips: [{ ...side, ...changes }],
});
const draft = (measures = [knee()], marks = [levelMark(), noteMark()]) => ({ measures, marks });

describe("the measures of a draft", () => {
  it("are ready with their values, by view and pitch, without the draft's own ids", () => {
    const written = draft([knee(), finish()]);
    expect(measuresMissing(written, facts())).toEqual([]);
    const [first, second] = measuresToSend(written, facts());
    expect(first).toMatchObject({
      kind: "front_knee_flexion",
      view: "open_side",
      pitchType: "fastball",
      frame: 108,
    });
    expect(first?.value).toBeCloseTo(40, 6);
    expect(second?.value).toBeCloseTo(125, 6);
    expect(first).not.toHaveProperty("id");
  });

  it.each([
    [
      "a knee from the front",
      [knee()],
      { view: "front" as const },
      "take off the measure on frame 109: front-knee flexion is measured from the open side or the closed side, not from the front",
    ],
    [
      "a hold while nobody has said the rate",
      [finish()],
      { capturedFps: null },
      "take off the measure on frame 145: frames only: nobody has said how many frames a second this clip was recorded at, and phones save slow motion stretched",
    ],
    [
      "a clip nobody has said the view of",
      [knee()],
      { view: null },
      "take off the measure on frame 109: front-knee flexion needs to know where the camera stood, and nobody has said",
    ],
  ])("are not sent: %s", (_, measures, changes, missing) => {
    expect(measuresMissing(draft(measures), facts(changes))).toEqual([missing]);
    expect(() => measuresToSend(draft(measures), facts(changes))).toThrow(/has no value/);
  });

  it("need the words of a note", () => {
    const missing = ["write the words of a note on the picture, or take it off"];
    expect(measuresMissing(draft([], [noteMark({ text: "  " })]), facts())).toEqual(missing);
  });
});

describe("their frames and checkpoints", () => {
  const clips = [{ id: "side", frameCount: 180 }];
  const sending = { openCount: 0, max: 5, clips };
  const said = { keeps: [keep()], corrections: [] };

  it.each([
    ["a measure", { measures: [knee({ frame: 180 })] }],
    ["the end of a hold", { measures: [finish({ untilFrame: 180 })] }],
    ["one point", { measures: [knee({ points: [{ frame: 180, x: 1, y: 1 }] })] }],
    ["a mark", { marks: [levelMark({ frame: 180 })] }],
    ["the end of a span", { marks: [noteMark({ untilFrame: 180 })] }],
  ])("are refused beyond the clip: %s", (_, placed) => {
    const missing = ["frame 181 is marked on a clip of 180 frames"];
    expect(missingToSend(review({ ...said, ...placed }), sending)).toEqual(missing);
    const settling = { openIds: [], heldIds: [], clips };
    expect(missingToSettle(check(placed), settling)).toEqual(missing);
  });

  it("are refused on another round's clip, and under a checkpoint there is not", () => {
    const strange = review({ ...said, measures: [knee({ clipId: "other" })] });
    expect(missingToSend(strange, sending)).toEqual([
      "something is marked on a clip that is not in this round",
    ]);
    expect(measuresMissing(strange, facts())).toEqual([]);
    const unknown = { checkpoints: [], viewOfClip: new Map() };
    expect(misfits({ judgements: [], marks: [levelMark()] }, unknown)).toEqual([
      "a checkpoint is named that there is not",
    ]);
    expect(misfits({ judgements: [], measures: [knee({ checkpointId: null })] }, unknown)).toEqual([]);
  });
});
