import { describe, expect, it } from "vitest";
import { THROW_KINDS } from "@/server/domain/throwing/throw-entry";
import {
  type GameDetails,
  gameProblem,
  hasGameDetails,
  MOST_INNINGS_CAUGHT,
  MOST_INTENTIONAL_WALKS,
  MOST_OUTS,
  NO_GAME,
} from "@/server/domain/throwing/validate-game";

const problem = (said: Partial<GameDetails>, kind: (typeof THROW_KINDS)[number] = "game", pitches = 40) =>
  gameProblem({ ...NO_GAME, ...said, kind, pitches }, ["tea_own"]);

describe("what a game says", () => {
  it.each<[string, Partial<GameDetails>]>([
    ["nothing", {}],
    ["no outs", { outs: 0 }],
    ["twenty innings", { outs: MOST_OUTS }],
    ["a whole game caught", { inningsCaught: 7 }],
    ["a last batter on the first pitch", { pitchesAtLastBatter: 0 }],
    ["a last batter who was announced on, after the last pitch", { pitchesAtLastBatter: 40 }],
    ["walks", { intentionalWalks: 2 }],
    ["an own team", { teamId: "tea_own" }],
  ])("may be %s", (_, said) => {
    expect(problem(said)).toBeNull();
  });

  it.each<[string, Partial<GameDetails>, string]>([
    ["outs below none", { outs: -1 }, "Innings pitched are whole innings and thirds, 0 or more."],
    ["broken outs", { outs: 1.5 }, "Innings pitched are whole innings and thirds, 0 or more."],
    [
      "too many outs",
      { outs: MOST_OUTS + 1 },
      "More than 20 innings pitched in one entry looks like a slip: check the number.",
    ],
    [
      "innings caught below none",
      { inningsCaught: -1 },
      "Innings caught are a whole number, 0 or more: an inning begun counts as one.",
    ],
    [
      "too many innings caught",
      { inningsCaught: MOST_INNINGS_CAUGHT + 1 },
      "More than 20 innings caught in one entry looks like a slip: check the number.",
    ],
    [
      "a count at the last batter below none",
      { pitchesAtLastBatter: -1 },
      "The count at the last batter is a whole number, 0 or more.",
    ],
    [
      "a last batter after more pitches than there were",
      { pitchesAtLastBatter: 41 },
      "The last batter cannot have come up after more pitches than were thrown (40).",
    ],
    ["walks below none", { intentionalWalks: -1 }, "Intentional walks are a whole number, 0 or more."],
    [
      "too many walks",
      { intentionalWalks: MOST_INTENTIONAL_WALKS + 1 },
      "More than 20 intentional walks in one entry looks like a slip: check the number.",
    ],
    ["another's team", { teamId: "tea_other" }, "That is not a team of this athlete."],
  ])("may not be %s", (_, said, sentence) => {
    expect(problem(said)).toBe(sentence);
  });
});

describe("an entry of another kind", () => {
  it.each(THROW_KINDS)("of %s says innings only where it counts as a game", (kind) => {
    const isGame = ["game", "live_at_bats", "showcase"].includes(kind);
    expect(hasGameDetails(kind)).toBe(isGame);
    expect(problem({}, kind)).toBeNull();
    expect(problem({ outs: 3 }, kind)).toBe(isGame ? null : "Innings, walks and a team belong to a game.");
    expect(problem({ intentionalWalks: 1 }, kind) === null).toBe(isGame);
  });
});
