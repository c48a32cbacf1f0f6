import { describe, expect, it } from "vitest";
import { placesOf } from "@/components/reviews/reading-places";
import type { ClipView, CorrectionView, ReadingView } from "@/server/api/reviews/shapes";

const clip = (id: string, changes: Partial<ClipView> = {}): ClipView => ({
  ...{ id, roundId: "now", part: "first", state: "ready", view: "open_side", pitchType: null, note: null },
  ...{ pitchesThrown: 6, filmedOn: "2026-11-25", retainUntil: "2027-05-25", widthPx: 640, heightPx: 360 },
  ...{ durationMs: 1000, hasPoster: false, codec: "avc1.42c01f", capturedFps: 60, captureSource: "sender" },
  ...{ conversion: null, conversionShare: null, frameCount: 200 },
  frameTimesMs: Array.from({ length: 200 }, (_, frame) => frame * 10),
  ...changes,
});
const FIRST = clip("first");
const REPLY = clip("reply", { part: "reply" });

type Happening = CorrectionView["happenings"][number];
const happening = (changes: Partial<Happening>): Happening => ({
  ...{ kind: "given", atMs: 0, reason: "", roundId: "now", clipId: null, frame: null },
  ...changes,
});
const correction = (changes: Partial<CorrectionView> = {}): CorrectionView => ({
  ...{ id: "cor", roundId: "now", checkpointId: "hips-lead", checkpointName: "Hips lead", phase: "stride" },
  ...{ event: "front_foot_contact", cue: "Hip first", drill: "", clipId: "first", frame: 100, position: 0 },
  ...{ voiceId: null, state: "given", cameBack: false, yesInARow: 0, givenAtMs: 0, givenOn: "2026-11-25" },
  ...{ happenings: [happening({ clipId: "first", frame: 100 })], practisedOn: [], tickableDays: [] },
  ...changes,
});
const told = (clips: ClipView[], eventMarks: ReadingView["eventMarks"] = []) => ({
  round: { id: "now" },
  ...{ clips, eventMarks },
});
const contactOnReply = { clipId: "reply", event: "front_foot_contact" as const, frame: 120 };

describe("where a correction is shown", () => {
  it("is its own frame, with nothing beside it while there is no reply", () => {
    expect(placesOf(correction(), told([FIRST]))).toEqual({ place: { clip: FIRST, frame: 100 }, pair: null });
  });

  it("is beside the same moment of the reply, once that is marked", () => {
    expect(placesOf(correction(), told([FIRST, REPLY])).pair).toBeNull();
    expect(placesOf(correction(), told([FIRST, REPLY], [contactOnReply]))).toEqual({
      place: { clip: FIRST, frame: 100 },
      pair: { older: { clip: FIRST, frame: 100 }, newer: { clip: REPLY, frame: 120 } },
    });
  });

  it("is the frame it was judged on in this round, beside the one it was given on", () => {
    const judged = happening({ kind: "partly", clipId: "reply", frame: 130 });
    const given = correction({ happenings: [happening({ clipId: "first", frame: 100 }), judged] });
    expect(placesOf(given, told([FIRST, REPLY], [contactOnReply]))).toEqual({
      place: { clip: REPLY, frame: 130 },
      pair: { older: { clip: FIRST, frame: 100 }, newer: { clip: REPLY, frame: 130 } },
    });
  });

  it("is never beside a reply of another view", () => {
    const front = clip("reply", { part: "reply", view: "front" });
    expect(placesOf(correction(), told([FIRST, front], [contactOnReply])).pair).toBeNull();
  });

  it.each([
    ["expired", told([clip("first", { state: "expired", frameTimesMs: [] })])],
    ["not among those here", told([REPLY])],
    ["shorter than it was", told([clip("first", { frameTimesMs: [0, 10] })])],
  ])("is nowhere when its clip is %s", (_, without) => {
    expect(placesOf(correction(), without)).toEqual({ place: null, pair: null });
  });
});
