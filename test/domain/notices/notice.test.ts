import { describe, expect, it } from "vitest";
import { bodyOnceSent, recipientsFor, retryAfterMs } from "@/server/domain/notices/notice";

const family = {
  athletePersonId: "kid",
  ageYears: 14,
  athleteHasSignIn: true,
  guardianPersonIds: ["mum", "dad"],
  grantsGuardians: false,
};

describe("who is told", () => {
  it("is a minor with every guardian, never a minor alone", () => {
    expect(recipientsFor(family)).toEqual(["kid", "mum", "dad"]);
    expect(recipientsFor({ ...family, guardianPersonIds: [] })).toEqual([]);
  });

  it("is the guardians alone for an athlete who has no sign-in", () => {
    expect(recipientsFor({ ...family, ageYears: 11, athleteHasSignIn: false })).toEqual(["mum", "dad"]);
  });

  it("is an athlete of age also without a sign-in, since nobody else is told for them", () => {
    expect(recipientsFor({ ...family, ageYears: 18, athleteHasSignIn: false })).toEqual(["kid"]);
  });

  it("is an athlete of age alone, with guardians only when granted", () => {
    expect(recipientsFor({ ...family, ageYears: 18 })).toEqual(["kid"]);
    expect(recipientsFor({ ...family, ageYears: 18, grantsGuardians: true })).toEqual(["kid", "mum", "dad"]);
  });
});

describe("trying again", () => {
  it("doubles the wait from a minute to two hours", () => {
    expect([1, 2, 3, 7, 8, 20].map((attempts) => retryAfterMs(attempts) / 60_000)).toEqual([
      1, 2, 4, 64, 120, 120,
    ]);
  });
});

describe("what is kept of a notice that has left", () => {
  it("is its words without a single-use link, and every other link", () => {
    const link = "https://a.example/join/x1_-yyyyyyyyyyyyyyyyyyyy";
    expect(bodyOnceSent(`Open\n${link}\nsoon`)).toBe("Open\n(the link went with the mail)\nsoon");
    const other = "Read it: https://a.example/family/ath_1/rounds/rnd_1";
    expect(bodyOnceSent(other)).toBe(other);
  });
});
