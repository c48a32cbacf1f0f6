import { describe, expect, it } from "vitest";
import {
  choicesOf,
  kindInWords,
  methodInWords,
  namesInWords,
  progressInWords,
  saidInWords,
  standingInWords,
  thereInWords,
  viewsIn,
} from "@/components/agreement/agreement-words";
import { answerOf, chosenBy } from "@/components/agreement/judged-as";

const pool = {
  checkpoints: [
    { id: "knee", name: "Front knee bent" },
    { id: "glove", name: "Glove controlled" },
  ],
  counts: [
    { checkpointId: "knee", way: "judge", view: "open_side", frames: 9 },
    { checkpointId: "knee", way: "measure", view: "open_side", frames: 4 },
    { checkpointId: "glove", way: "judge", view: "front", frames: 2 },
  ],
} as unknown as Parameters<typeof choicesOf>[0];

describe("blind sets in words", () => {
  it("offers what there are frames of, by way and view", () => {
    expect(choicesOf(pool, "judge", "open_side")).toEqual([
      { id: "knee", name: "Front knee bent", frames: 9 },
    ]);
    expect(choicesOf(pool, "judge", "back")).toEqual([]);
    expect(viewsIn(pool, "judge")).toEqual(new Set(["open_side", "front"]));
    expect(viewsIn(pool, "measure")).toEqual(new Set(["open_side"]));
  });

  it.each([
    [0, 12, "0 frames are there to draw from: fewer than the 5 that a set has at least."],
    [1, null, "1 frame is there to draw from: fewer than the 5 that a set has at least."],
    [9, 12, "9 frames are there to draw from: fewer than the 12 asked for."],
    [12, 12, "12 frames are there to draw from."],
  ])("says of %i frames, %s asked for, whether they are enough", (there, asked, words) => {
    expect(thereInWords(there, asked)).toBe(words);
  });

  it.each([
    [{ begun: 0, finished: 0 }, "nobody has begun"],
    [{ begun: 1, finished: 0 }, "1 coach has begun, none is through"],
    [{ begun: 2, finished: 1 }, "2 coaches have begun, 1 is through"],
    [{ begun: 3, finished: 2 }, "3 coaches have begun, 2 are through"],
  ])("says how far coaches are: %o", (far, words) => {
    expect(progressInWords(far)).toBe(words);
  });

  it.each([
    [0, "not begun"],
    [5, "under way"],
    [12, "through"],
  ])("says where a coach stands who rated %i of 12", (rated, words) => {
    expect(standingInWords(rated, 12)).toBe(words);
  });

  it("says what was said, and names the figure with its source", () => {
    expect(saidInWords("judgement", 2)).toBe("2 mostly");
    expect(saidInWords("front_knee_flexion", null)).toBe("could not be seen");
    expect(kindInWords("judgement")).toBe("Judgements");
    expect(methodInWords("judgement")).toContain("Cohen 1968");
    expect(methodInWords("front_knee_flexion")).toContain("ICC(2,1)");
  });

  it.each([
    [[], ""],
    [["Ada"], "Ada"],
    [["Ada", "Ben"], "Ada and Ben"],
    [["Ada", "Ben", "Cleo"], "Ada, Ben and Cleo"],
  ])("puts %o into a sentence", (names, words) => {
    expect(namesInWords(names)).toBe(words);
  });
});

describe("judging by keys", () => {
  it.each([
    ["0", "0"],
    ["3", "3"],
    ["u", "unseen"],
    ["U", "unseen"],
    ["4", null],
    ["Enter", null],
    ["F1", null],
  ])("%s chooses %s", (key, chosen) => {
    expect(chosenBy(key)).toBe(chosen);
  });

  it("sends a number, or that it could not be seen", () => {
    expect(answerOf("2")).toEqual({ kind: "judged", score: 2 });
    expect(answerOf("unseen")).toEqual({ kind: "unseen" });
  });
});
