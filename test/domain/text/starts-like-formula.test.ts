import { describe, expect, it } from "vitest";
import { startsLikeFormula } from "@/server/domain/text/starts-like-formula";

describe("a text that a spreadsheet program could run", () => {
  it.each(["=1+1", "+1", "-1", "@SUM", "＝1", "  =1", "\t1", "\r1", "\u0000x", "\u200b=1"])(
    "is %j",
    (text) => {
      expect(startsLikeFormula(text)).toBe(true);
    },
  );

  it.each(["", "Lakeside", "1-1", "a = b", " two", "'=1"])("is not %j", (text) => {
    expect(startsLikeFormula(text)).toBe(false);
  });
});
