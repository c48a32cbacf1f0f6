import { describe, expect, it } from "vitest";
import { athleteRecord, birthProblem, isMinorAlone } from "@/server/domain/people/athlete-record";

const RECORD = {
  givenName: "Kit",
  familyName: "Marsh",
  email: null,
  phone: null,
  bornOn: "2014-05-10",
  throws: "right",
  heightCm: 150,
  homeSiteId: "site_north",
  ruleBookId: "usa-baseball-2018",
};

describe("an athlete's record", () => {
  it.each([
    ["29 February of a leap year", { bornOn: "2012-02-29" }, true],
    ["29 February of a common year", { bornOn: "2013-02-29" }, false],
    ["a height of 80 cm", { heightCm: 80 }, true],
    ["a height of 79 cm", { heightCm: 79 }, false],
    ["a height of half a centimetre", { heightCm: 150.5 }, false],
    ["no height yet", { heightCm: null }, true],
    ["no rule book", { ruleBookId: "" }, false],
    ["a blank name", { givenName: "   " }, false],
    ["an e-mail without a domain", { email: "kit@" }, false],
    ["a field nobody asked for", { isAdmin: true }, false],
  ])("takes or refuses %s", (_, change, isTaken) => {
    expect(athleteRecord.safeParse({ ...RECORD, ...change }).success).toBe(isTaken);
  });

  it("keeps e-mails in lower case, so that one address is one account", () => {
    expect(athleteRecord.parse({ ...RECORD, email: " Kit@Test.Example " }).email).toBe("kit@test.example");
  });
});

describe("a birth date", () => {
  it.each([
    ["2021-11-25", null],
    ["2021-11-26", "That birth date gives an age of 4."],
    ["2030-01-01", "That birth date gives an age of -4."],
    ["1945-11-26", null],
    ["1945-11-25", "That birth date gives an age of 81."],
    ["1900-01-01", "That birth date gives an age of 126."],
  ])("%s is judged by the age it gives on 25 Nov 2026", (bornOn, problem) => {
    expect(birthProblem(bornOn, "2026-11-25")).toBe(problem);
  });
});

describe("a minor", () => {
  it("stands alone without a guardian until the day before the eighteenth birthday", () => {
    expect(isMinorAlone("2008-11-26", 0, "2026-11-25")).toBe(true);
    expect(isMinorAlone("2008-11-25", 0, "2026-11-25")).toBe(false);
    expect(isMinorAlone("2014-05-10", 1, "2026-11-25")).toBe(false);
  });
});
