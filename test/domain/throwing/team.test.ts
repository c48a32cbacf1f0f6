import { describe, expect, it } from "vitest";
import { MOST_TEAMS, newTeamProblem, teamProblem } from "@/server/domain/throwing/team";

const RIVER = { id: "tea_river", name: "River Nine", endedAtMs: null as number | null };
const SCHOOL = { id: "tea_school", name: "School", endedAtMs: 1 as number | null };

describe("a team of an outing", () => {
  it.each([null, "tea_river"])("may be %s", (teamId) => {
    expect(teamProblem(teamId, [RIVER, SCHOOL])).toBeNull();
  });

  it.each([
    ["tea_school", "The time with School has ended: choose another team."],
    ["tea_other", "That is not a team of this athlete."],
  ])("may not be %s", (teamId, sentence) => {
    expect(teamProblem(teamId, [RIVER, SCHOOL])).toBe(sentence);
  });
});

describe("a new team", () => {
  const add = (name: string, teams = [RIVER, SCHOOL], ruleBookId = "book") =>
    newTeamProblem({ name, ruleBookId }, teams, ["book"]);

  it.each(["Hill Club", "School", "x".repeat(80)])("may be called %s", (name) => {
    expect(add(name)).toBeNull();
  });

  it.each([
    ["  ", "Name the team or league."],
    ["x".repeat(81), "The name fits in 80 characters."],
    ["river nine ", "river nine is on the list already."],
  ])("may not be called %j", (name, sentence) => {
    expect(add(name)).toBe(sentence);
  });

  it("plays by a book of the list", () => {
    expect(add("Hill Club", [], "none")).toBe("Choose a rule book from the list.");
  });

  it("is one of few at once; ended ones are not counted", () => {
    const teams = (count: number, endedAtMs: number | null) =>
      Array.from({ length: count }, (_, at) => ({ id: `tea_${at}`, name: `Team ${at}`, endedAtMs }));
    expect(add("One more", teams(MOST_TEAMS - 1, null))).toBeNull();
    expect(add("One more", teams(MOST_TEAMS, 1))).toBeNull();
    expect(add("One more", teams(MOST_TEAMS, null))).toBe("At most 8 teams at once: end one first.");
  });
});
