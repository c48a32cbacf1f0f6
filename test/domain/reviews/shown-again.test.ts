import { describe, expect, it } from "vitest";
import { givenAt, isOpen, moveCorrection } from "@/server/domain/reviews/correction-state";
import { reviewDraftSchema } from "@/server/domain/reviews/draft";
import { missingToSend } from "@/server/domain/reviews/readiness";
import { recapInWords, recapOf } from "@/server/domain/reviews/recap";
import type { CheckedCorrection } from "@/server/domain/reviews/settling";
import {
  givenTwice,
  missingInShownAgain,
  recapShownAgain,
  seenInRound,
  shownAgainOutcomes,
} from "@/server/domain/reviews/shown-again";
import { correction, review, shownAgain } from "../../helpers/review-drafts";

const hips: CheckedCorrection = {
  id: "hips",
  phase: "stride",
  frame: 60,
  checkpointName: "Hips lead",
  cue: "Hip first",
  standing: givenAt(0),
};
const gaze: CheckedCorrection = { ...hips, id: "gaze", phase: "wind_up", checkpointName: "Gaze level" };

describe("a correction from before that is shown again", () => {
  it("stays open, on the frame of today, in the delivery's order", () => {
    const rows = [shownAgain("hips", { frame: 143 }), shownAgain("gaze", { verdict: "partly", frame: 12 })];
    const outcomes = shownAgainOutcomes(rows, [hips, gaze], 5);
    expect(outcomes.map(({ correctionId, kind, frame }) => [correctionId, kind, frame])).toEqual([
      ["gaze", "partly", 12],
      ["hips", "not_yet", 143],
    ]);
    expect(outcomes.every(({ standing }) => isOpen(standing.state))).toBe(true);
    expect(outcomes.map(({ standing }) => standing.state)).toEqual(["showing", "given"]);
  });

  it("that was showing goes back to given when it is not yet there", () => {
    const move = moveCorrection(hips.standing, { kind: "yes", atMs: 1, reason: "" });
    if (!move.ok) throw new Error("A yes is always possible.");
    const showing = { ...hips, standing: move.standing };
    const [outcome] = shownAgainOutcomes([shownAgain("hips")], [showing], 5);
    expect(outcome?.standing).toMatchObject({ state: "given", cameBack: false, yesInARow: 0 });
  });

  it("takes only a verdict that leaves it open, and each correction once", () => {
    const accepts = (rows: unknown[]) =>
      reviewDraftSchema.safeParse({ ...review(), shownAgain: rows }).success;
    expect(accepts([shownAgain("hips"), shownAgain("gaze")])).toBe(true);
    expect(accepts([{ ...shownAgain("hips"), verdict: "yes" }])).toBe(false);
    expect(accepts([shownAgain("hips"), shownAgain("hips", { frame: 9 })])).toBe(false);
  });

  it("is a review by itself, counts as no new one, and must lie on a frame of the round's clips", () => {
    const only = review({ corrections: [], shownAgain: [shownAgain("hips", { frame: 143 })] });
    const facts = { openCount: 5, max: 5, clips: [{ id: "side", frameCount: 180 }] };
    expect(missingToSend(only, facts)).toEqual([]);
    const late = review({ corrections: [], shownAgain: [shownAgain("hips", { frame: 180 })] });
    expect(missingToSend(late, facts)).toEqual(["frame 181 is marked on a clip of 180 frames"]);
  });

  it("must still be open", () => {
    expect(missingInShownAgain([shownAgain("hips")], ["gaze", "hips"])).toEqual([]);
    expect(missingInShownAgain([shownAgain("hips")], ["gaze"])).toEqual([
      "leave out what is shown again and is not open any more",
    ]);
    expect(missingInShownAgain([], [])).toEqual([]);
  });

  it("is told after the keeps with the word of today, and takes no number", () => {
    const told = recapShownAgain(
      [shownAgain("hips", { verdict: "partly", note: "Better\nthan last week" }), shownAgain("gone")],
      [{ ...hips, drill: "hip bumps" }],
    );
    const recap = recapOf({ keeps: [], corrections: [], shownAgain: told });
    expect(recap.count).toBe(0);
    expect(recapInWords(recap)).toBe(
      [
        "Go on with what is still open:",
        "- Hips lead (stride): Hip first. Drill: hip bumps. Partly there. Better than last week.",
        "No new corrections this time.",
      ].join("\n"),
    );
    const both = recapOf({
      keeps: [],
      corrections: [{ ...correction(), checkpointName: "Head steady" }],
      shownAgain: told,
    });
    expect(recapInWords(both).split("\n").slice(2)).toEqual([
      "Work on 1 correction:",
      "1. Head steady (stride): Hip first.",
    ]);
  });

  it("is seen where the round last saw it, else where it was given", () => {
    const given = { kind: "given" as const, roundId: "first", clipId: "old", frame: 60 };
    const again = { kind: "not_yet" as const, roundId: "second", clipId: "new", frame: 143 };
    const seen = { clipId: "old", frame: 60, happenings: [given, again] };
    expect(seenInRound(seen, "second")).toEqual({ clipId: "new", frame: 143 });
    expect(seenInRound(seen, "first")).toEqual({ clipId: "old", frame: 60 });
    expect(seenInRound(seen, "third")).toEqual({ clipId: "old", frame: 60 });
  });
});

describe("a second correction on one checkpoint", () => {
  const checkpoints = [
    { id: "hips-lead", name: "Hips lead" },
    { id: "gaze-on-plate", name: "Eyes on the plate" },
  ];
  const on = (...ids: string[]) => ids.map((checkpointId) => ({ checkpointId }));
  const open = "leave out the new correction on Hips lead: one is open there already, show that one again";
  const several = "leave one correction on Hips lead: the draft has several";

  it.each([
    ["none", on(), on("hips-lead"), []],
    ["one on a checkpoint that has none open", on("gaze-on-plate"), on("hips-lead"), []],
    ["one on one that has", on("hips-lead"), on("hips-lead"), [open]],
    ["two on one of the draft", on("hips-lead", "gaze-on-plate", "hips-lead"), on(), [several]],
    ["two on one that has one open: told once", on("hips-lead", "hips-lead"), on("hips-lead"), [open]],
    ["two on two", on("hips-lead", "gaze-on-plate"), on(), []],
  ])("%s", (_case, corrections, openOnes, missing) => {
    expect(givenTwice(corrections, openOnes, checkpoints)).toEqual(missing);
  });
});
