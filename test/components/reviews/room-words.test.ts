import { describe, expect, it } from "vitest";
import { clipFacts, clipName } from "@/components/reviews/clip-words";
import { happeningInWords, practiceInWords } from "@/components/reviews/correction-words";
import { sameMoment } from "@/components/reviews/room-check-words";
import { markedBeside } from "@/components/reviews/use-clip-in-hand";
import type { ClipView } from "@/server/api/reviews/shapes";
import { check, verdict } from "../../helpers/review-drafts";

const clip = (id: string, changes: Partial<ClipView> = {}): ClipView => ({
  id,
  roundId: "rnd_1",
  part: "first",
  state: "ready",
  view: "open_side",
  pitchType: null,
  pitchesThrown: 6,
  note: null,
  filmedOn: "2026-11-06",
  retainUntil: "2027-05-05",
  widthPx: 640,
  heightPx: 360,
  durationMs: 3000,
  hasPoster: true,
  codec: "avc1.42c01f",
  capturedFps: 60,
  captureSource: "sender",
  conversion: null,
  conversionShare: null,
  frameCount: 180,
  frameTimesMs: [],
  ...changes,
});

describe("clipName", () => {
  it("is the view, with the day or the number when there are others of it", () => {
    const [first, second] = [clip("a"), clip("b")];
    const reply = clip("c", { part: "reply", filmedOn: "2026-11-17" });
    expect(clipName(first, [first])).toBe("Open side");
    expect(clipName(first, [first, second])).toBe("Open side 1");
    expect(clipName(second, [first, second])).toBe("Open side 2");
    expect(clipName(reply, [first, reply])).toBe("Open side, Tue 17 Nov");
    expect(clipName(clip("d", { view: null }))).toBe("Clip");
  });

  it("goes with what the family said, and leaves out what it did not", () => {
    expect(clipFacts(clip("a", { pitchType: "change_up", pitchesThrown: 1 }))).toEqual([
      "filmed Fri 6 Nov",
      "change-up",
      "1 pitch",
    ]);
    expect(clipFacts(clip("a", { filmedOn: null, pitchesThrown: null }))).toEqual([]);
  });
});

describe("happeningInWords and practiceInWords", () => {
  it("say what was said of a correction on which day at its zone", () => {
    const one = {
      kind: "not_yet",
      atMs: Date.UTC(2026, 11, 3, 2),
      reason: " Slow down. ",
      roundId: null,
      clipId: null,
      frame: null,
    } as const;
    expect(happeningInWords(one, "America/New_York")).toBe("Wed 2 Dec: not yet. Slow down.");
    expect(happeningInWords({ ...one, reason: "" }, "UTC")).toBe("Thu 3 Dec: not yet.");
  });

  it("count the days of practice", () => {
    expect(practiceInWords([])).toBe("none ticked");
    expect(practiceInWords(["2026-12-01"])).toBe("1 day, last Tue 1 Dec");
    expect(practiceInWords(["2026-11-30", "2026-12-01"])).toBe("2 days, last Tue 1 Dec");
  });
});

describe("sameMoment", () => {
  const correction = { id: "cor_1", frame: 120, event: "ball_release" as const };

  it("shows the new clip as far from the correction's event as it was given, once that is marked on both", () => {
    const marks = { oldMarks: { ball_release: 118 }, newMarks: { ball_release: 90 } };
    expect(sameMoment(correction, marks, check())).toEqual({ old: 120, new: 92 });
  });

  it("shows the event alone where it is marked on the new clip only, and nothing where it is not", () => {
    expect(sameMoment(correction, { oldMarks: {}, newMarks: { ball_release: 90 } }, check())).toEqual({
      old: 120,
      new: 90,
    });
    expect(sameMoment(correction, { oldMarks: { ball_release: 118 }, newMarks: {} }, check())).toEqual({
      old: 120,
      new: null,
    });
  });

  it("goes by the frame that was chosen, whatever is marked", () => {
    const chosen = check({ verdicts: [verdict("cor_1", { clipId: "new", frame: 40 })] });
    expect(sameMoment(correction, { oldMarks: {}, newMarks: { ball_release: 90 } }, chosen)).toEqual({
      old: 120,
      new: 40,
    });
  });
});

describe("markedBeside", () => {
  const marks = { finish: 150, first_movement: 10, ball_release: 110 };

  it.each([
    [10, 1, 110],
    [110, 1, 150],
    [150, 1, undefined],
    [150, -1, 110],
    [60, -1, 10],
    [10, -1, undefined],
  ] as const)("from frame %i towards %i: %s", (frame, direction, found) => {
    expect(markedBeside(marks, frame, direction)).toBe(found);
  });
});
