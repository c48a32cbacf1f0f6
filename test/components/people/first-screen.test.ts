import { expect, it } from "vitest";
import { firstFamilyScreenOf, firstScreenOf } from "@/components/people/first-screen";

const athletes = [{ athleteId: "ath_1" }, { athleteId: "ath_2" }];

it.each([
  ["staff begin with the day, even when they are parents too", { roles: ["coach"], athletes }, "/today"],
  ["a family begins with its first athlete", { roles: [], athletes }, "/family/ath_1"],
  ["somebody with neither begins with their account", { roles: [], athletes: [] }, "/account"],
])("%s", (_, person, path) => {
  expect(firstScreenOf(person)).toBe(path);
});

it("leads a coach who is a parent to the family screens by way of their athlete", () => {
  expect(firstFamilyScreenOf({ athletes })).toBe("/family/ath_1");
});
