import { describe, expect, it } from "vitest";
import { shortName } from "@/server/domain/people/short-name";

describe("a short name", () => {
  it.each([
    ["Theo", "Hallowell", "Theo H."],
    ["Zoë", "émond", "Zoë É."],
    ["Prince", "", "Prince"],
    ["", "", "Name erased"],
  ])("of %s %s is %s", (givenName, familyName, short) => {
    expect(shortName({ givenName, familyName })).toBe(short);
  });
});
