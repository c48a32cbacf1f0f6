import { describe, expect, it } from "vitest";
import { gameInWords } from "@/server/domain/throwing/game-in-words";
import { NO_GAME } from "@/server/domain/throwing/validate-game";

const NOBODY = { teamName: "", opponent: "" };

describe("what a game says, in words", () => {
  it.each([
    [{}, NOBODY, ""],
    [
      { outs: 7 },
      { teamName: "River Nine", opponent: "Lakeside" },
      "River Nine against Lakeside; 2 1/3 innings pitched",
    ],
    [{}, { teamName: "", opponent: "Lakeside" }, "against Lakeside"],
    [{}, { teamName: "River Nine", opponent: "" }, "River Nine"],
    [
      { outs: 0, inningsCaught: 3, pitchesAtLastBatter: 36, intentionalWalks: 2 },
      NOBODY,
      "0 innings pitched; 3 innings caught; last batter at 36; 2 intentional walks",
    ],
    [{ intentionalWalks: 1 }, NOBODY, "1 intentional walk"],
  ])("%j with %j reads so", (said, names, words) => {
    expect(gameInWords({ ...NO_GAME, ...said }, names)).toBe(words);
  });
});
