import { describe, expect, it } from "vitest";
import {
  addCorrection,
  addKeep,
  changeCorrection,
  changeRetirement,
  changeVerdict,
  judge,
  markEvent,
  marksOn,
  removeCorrection,
  removeKeep,
} from "@/components/reviews/room-edits";
import {
  checkDraftSchema,
  EMPTY_CHECK_DRAFT,
  EMPTY_REVIEW_DRAFT,
  reviewDraftSchema,
} from "@/server/domain/reviews/draft";

const place = { clipId: "side", frame: 7 };
const hips = { id: "hips-lead", phase: "stride" as const };

describe("marks", () => {
  it("stand once a clip and moment, wherever they are moved, and can be taken away", () => {
    const once = markEvent(EMPTY_REVIEW_DRAFT, "side", "ball_release", 110);
    const moved = markEvent(markEvent(once, "behind", "ball_release", 90), "side", "ball_release", 112);
    expect(marksOn("side", [], moved.eventMarks)).toEqual({ ball_release: 112 });
    expect(marksOn("behind", [], moved.eventMarks)).toEqual({ ball_release: 90 });
    expect(markEvent(moved, "side", "ball_release", null).eventMarks).toHaveLength(1);
    expect(once.eventMarks).toEqual([{ clipId: "side", event: "ball_release", frame: 110 }]);
  });

  it("that are being written stand for those that were sent", () => {
    const sent = [
      { clipId: "side", event: "finish" as const, frame: 150 },
      { clipId: "side", event: "ball_release" as const, frame: 110 },
    ];
    const written = [{ clipId: "side", event: "finish" as const, frame: 148 }];
    expect(marksOn("side", sent, written)).toEqual({ finish: 148, ball_release: 110 });
  });
});

describe("judgements", () => {
  it("stand once a clip and checkpoint on the last frame they were given on", () => {
    const first = judge(EMPTY_REVIEW_DRAFT, "hips-lead", place, 1);
    const second = judge(first, "hips-lead", { clipId: "side", frame: 9 }, 3);
    expect(second.judgements).toEqual([{ checkpointId: "hips-lead", clipId: "side", frame: 9, score: 3 }]);
    expect(judge(second, "hips-lead", place, null).judgements).toEqual([]);
  });
});

describe("the slip", () => {
  it("takes a correction on the frame in sight, changes it, and lets it go; what results is a draft each time", () => {
    const added = addCorrection(EMPTY_REVIEW_DRAFT, hips, place, "c1");
    const changed = changeCorrection(added, "c1", { cue: "Hip first", frame: 8 });
    expect(changed.corrections).toEqual([
      {
        id: "c1",
        checkpointId: "hips-lead",
        phase: "stride",
        cue: "Hip first",
        drill: "",
        clipId: "side",
        frame: 8,
        voiceId: null,
      },
    ]);
    expect(added.corrections[0]?.cue).toBe("");
    for (const draft of [added, changed, removeCorrection(changed, "c1")]) {
      expect(reviewDraftSchema.safeParse(draft).success).toBe(true);
    }
  });

  it("takes keeps of a checkpoint and of none", () => {
    const own = addKeep(EMPTY_REVIEW_DRAFT, { checkpointId: null, phase: "stride", text: "" }, null, "k1");
    const both = addKeep(own, { checkpointId: "hips-lead", phase: "stride", text: "Good" }, place, "k2");
    expect(both.keeps.map((keep) => [keep.id, keep.clipId, keep.frame])).toEqual([
      ["k1", null, null],
      ["k2", "side", 7],
    ]);
    expect(removeKeep(both, "k1").keeps).toHaveLength(1);
    expect(reviewDraftSchema.safeParse(both).success).toBe(true);
  });
});

describe("a verdict and a retirement", () => {
  it("take each other's place, so that a correction never has both", () => {
    const judged = changeVerdict(EMPTY_CHECK_DRAFT, "cor_1", { verdict: "yes", ...place });
    const noted = changeVerdict(judged, "cor_1", { note: "On every pitch" });
    expect(noted.verdicts).toEqual([
      { correctionId: "cor_1", verdict: "yes", note: "On every pitch", clipId: "side", frame: 7 },
    ]);
    const retired = changeRetirement(noted, "cor_1", "");
    expect([retired.verdicts, retired.retirements]).toEqual([[], [{ correctionId: "cor_1", reason: "" }]]);
    const back = changeVerdict(retired, "cor_1", { verdict: "partly" });
    expect([back.retirements, back.verdicts.length]).toEqual([[], 1]);
    expect(changeRetirement(retired, "cor_1", null).retirements).toEqual([]);
    for (const draft of [judged, noted, retired, back]) {
      expect(checkDraftSchema.safeParse(draft).success).toBe(true);
    }
  });
});
