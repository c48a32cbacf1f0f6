import { expect, it } from "vitest";
import { capitalised } from "@/server/domain/text/capitalised";

it("begins a sentence, and leaves all else of it as it was", () => {
  expect(capitalised("free again")).toBe("Free again");
  expect(capitalised("at most N by the book")).toBe("At most N by the book");
  expect(capitalised("")).toBe("");
});
