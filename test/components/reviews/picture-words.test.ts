import { describe, expect, it } from "vitest";
import { framesInWords, outcomeOnPicture } from "@/components/reviews/picture-words";

describe("what is written on the picture", () => {
  it.each([
    ["48° ± 6, by placing the points alone", "48° ± 6"],
    ["82 % ± 2 of standing height", "82 % ± 2"],
    ["−3 % ± 4 of the rubber's width, to the glove side, open", "−3 % ± 4"],
    ["4° toward the plate, error not yet known", "4° ± not known"],
    ["0.52 s ± 0.02", "0.52 s ± 0.02"],
    ["Two points lie on one place: place them apart.", "Two points lie on one place: place them apart."],
  ])("is the figure with its margin alone: %s", (outcome, written) => {
    expect(outcomeOnPicture(outcome)).toBe(written);
  });

  it("counts frames from 1, as the player does", () => {
    expect(framesInWords({ frame: 39, untilFrame: null })).toBe("frame 40");
    expect(framesInWords({ frame: 39, untilFrame: 43 })).toBe("frames 40 to 44");
  });
});
