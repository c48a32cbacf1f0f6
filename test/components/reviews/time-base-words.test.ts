import { describe, expect, it } from "vitest";
import { checkSource, rateChoices, timeBaseInWords } from "@/components/reviews/time-base-words";
import { timeBaseOf } from "@/server/domain/clips/time-base";

const at30 = Array.from({ length: 120 }, (_, at) => (at * 1000) / 30);
const MARKS = { front_foot_contact: 20, ball_release: 56 };
const words = (capturedFps: number | null, source: Parameters<typeof timeBaseInWords>[1]) =>
  timeBaseInWords(timeBaseOf({ frameTimesMs: at30, capturedFps }), source);

describe("what a clip's times are worth", () => {
  it.each([
    [
      240,
      "file",
      "Recorded at 240 frames a second, by the file itself: the file plays 8 times slower than life.",
    ],
    [30, "sender", "Recorded at 30 frames a second, by what the sender said: the file plays as it happened."],
    [75, "coach", "Recorded at 75 frames a second, by a coach: the file plays 2.5 times slower than life."],
    [15, null, "Recorded at 15 frames a second: the file plays 2 times faster than life."],
  ] as const)("at %s, %s, reads as a sentence", (fps, source, sentence) => {
    expect(words(fps, source)).toBe(sentence);
  });

  it("says that only frames are shown while nobody has said", () => {
    expect(words(null, null)).toMatch(/^Frames only: nobody has said/);
  });
});

describe("the rates to choose from", () => {
  it("say what each would make of contact to release, and which is nearest to the published time", () => {
    const choices = rateChoices(at30, MARKS, null);
    expect(choices.map(({ label, hint }) => [label, hint])).toEqual([
      ["30 a second, as the file plays", "contact to release would be 1.200 s"],
      ["60 a second", "contact to release would be 0.600 s"],
      ["120 a second", "contact to release would be 0.300 s"],
      ["240 a second", "contact to release would be 0.150 s: nearest to the published time"],
      ["480 a second", "contact to release would be 0.075 s"],
    ]);
  });

  it("hold the rate that is set and the one the marks point to, in their places", () => {
    const rates = rateChoices(at30, { front_foot_contact: 20, ball_release: 35 }, 90);
    expect(rates.map((each) => each.capturedFps)).toEqual([
      expect.closeTo(30, 6),
      60,
      90,
      100,
      120,
      240,
      480,
    ]);
  });

  it("name no check while contact or release is not marked, and say what to mark", () => {
    expect(rateChoices(at30, {}, null).every(({ hint }) => hint === "")).toBe(true);
    expect(checkSource({})).toMatch(/^Mark front foot contact and ball release/);
    expect(checkSource(MARKS)).toContain("about 0.145 s");
  });
});
