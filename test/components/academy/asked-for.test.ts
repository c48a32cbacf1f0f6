import { expect, it } from "vitest";
import { pageNumber, wordOf } from "@/components/academy/asked-for";

it.each([
  ["3", 3],
  [["2", "5"], 2],
  [undefined, 1],
  ["0", 1],
  ["-1", 1],
  ["1.5", 1],
  ["1e99", 1],
  ["page", 1],
])("the page asked for by %o is %i", (text, page) => {
  expect(pageNumber(text)).toBe(page);
});

it("takes a word that there is, and no other", () => {
  expect(wordOf("failed", ["sent", "failed"])).toBe("failed");
  expect(wordOf("lost", ["sent", "failed"])).toBeNull();
  expect(wordOf(["sent"], ["sent", "failed"])).toBeNull();
});
