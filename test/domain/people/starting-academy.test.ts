import { expect, it } from "vitest";
import { startingAcademy } from "@/server/domain/people/starting-academy";

const START = {
  academyName: "Millbrook Pitching",
  currency: "USD",
  siteName: "North site",
  zone: "America/New_York",
  givenName: "Ada",
  familyName: "Frost",
  email: "ada@test.example",
  isCoach: false,
};

it.each([
  ["an academy with everything", {}, true],
  ["a zone without clock changes", { zone: "America/Phoenix" }, true],
  ["a zone that does not exist", { zone: "America/Millbrook" }, false],
  ["a currency that does not exist", { currency: "QQQ" }, false],
  ["a currency in small letters", { currency: "usd" }, false],
  ["no site", { siteName: " " }, false],
])("takes or refuses %s", (_, change, isTaken) => {
  expect(startingAcademy.safeParse({ ...START, ...change }).success).toBe(isTaken);
});
