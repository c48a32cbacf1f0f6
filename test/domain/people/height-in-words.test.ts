import { expect, it } from "vitest";
import { heightInWords } from "@/server/domain/people/height-in-words";

it.each([
  [178, "178 cm (5 ft 10 in)"],
  [183, "183 cm (6 ft 0 in)"],
  [182, "182 cm (6 ft 0 in)"],
  [181, "181 cm (5 ft 11 in)"],
  [80, "80 cm (2 ft 7 in)"],
])("%i cm is written in both units", (heightCm, words) => {
  expect(heightInWords(heightCm)).toBe(words);
});
