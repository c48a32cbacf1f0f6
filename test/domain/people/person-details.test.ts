import { describe, expect, it } from "vitest";
import { guardianChoice, phoneNumber } from "@/server/domain/people/person-details";

describe("a telephone number", () => {
  it.each([
    ["+1 (555) 010-2000", true],
    ["555.0102", true],
    ["1234", false],
    ["call the desk", false],
  ])("%s", (text, isTaken) => {
    expect(phoneNumber.safeParse(text).success).toBe(isTaken);
  });
});

describe("the choice of a guardian", () => {
  it("is a person on record or a new one who can be reached by e-mail", () => {
    const fresh = { givenName: "Gwen", familyName: "Marsh", phone: null };
    expect(guardianChoice.safeParse({ personId: "per_1" }).success).toBe(true);
    expect(guardianChoice.safeParse({ ...fresh, email: "gwen@test.example" }).success).toBe(true);
    expect(guardianChoice.safeParse({ ...fresh, email: null }).success).toBe(false);
    expect(guardianChoice.safeParse({ personId: "per_1", ...fresh }).success).toBe(false);
  });
});
