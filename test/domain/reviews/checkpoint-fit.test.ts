import { describe, expect, it } from "vitest";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { misfits } from "@/server/domain/reviews/checkpoint-fit";
import { correction, keep, review } from "../../helpers/review-drafts";

const facts = {
  checkpoints: STARTING_LIBRARY,
  viewOfClip: new Map<string, CameraView | null>([
    ["side", "open_side"],
    ["unknown", null],
  ]),
};
const judged = (checkpointId: string, clipId = "side") => ({
  checkpointId,
  clipId,
  frame: 1,
  score: 2 as const,
});

describe("misfits", () => {
  it.each([
    ["nothing that fits", review({ judgements: [judged("hips-lead")] }), []],
    ["a keep of no checkpoint", review({ keeps: [keep()] }), []],
    [
      "any checkpoint on a clip without a view",
      review({ judgements: [judged("closed-start", "unknown")] }),
      [],
    ],
    [
      "a checkpoint that is not there, once",
      review({ judgements: [judged("nope")], corrections: [correction({ checkpointId: "nope" })] }),
      ["a checkpoint is named that there is not"],
    ],
    [
      "a correction in another phase than its checkpoint",
      review({ corrections: [correction({ phase: "wind_up" })] }),
      [expect.stringContaining("is marked in another phase than its own")],
    ],
    [
      "a judgement from a view it cannot be made from",
      review({ judgements: [judged("closed-start")] }),
      ["Feet and front shoulder closed at the start cannot be judged from the open side"],
    ],
  ])("finds %s", (_name, draft, found) => {
    expect(misfits(draft, facts)).toEqual(found);
  });
});
