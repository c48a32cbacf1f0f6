import { describe, expect, it } from "vitest";
import { spokenTime, timeLeft, whyNotRecorded } from "@/components/voice/voice-words";

describe("the length of a spoken note", () => {
  it.each([
    [0, "0:00"],
    [7_400, "0:07"],
    [59_600, "1:00"],
  ])("of %d ms reads %s", (lengthMs, words) => {
    expect(spokenTime(lengthMs)).toBe(words);
  });

  it.each([
    [0, "1:00 left"],
    [1, "1:00 left"],
    [1_000, "0:59 left"],
    [59_100, "0:01 left"],
    [61_000, "0:00 left"],
  ])("leaves after %d ms %s", (spokenMs, words) => {
    expect(timeLeft(spokenMs)).toBe(words);
  });
});

it.each(["NotAllowedError", "NotFoundError", "NotReadableError", "TypeError", ""])(
  "a browser that says %s is told in one sentence, and that the words are enough",
  (name) => {
    expect(whyNotRecorded(name)).toMatch(/^[^.]+\. The words alone are a complete review\.$/);
  },
);
