import { inningsInWords } from "./innings";
import type { GameDetails } from "./validate-game";

/**
 * What a game says beside its pitches, in short; empty when it says nothing.
 * @param names the team's own name and the other side's; empty where unknown
 * @example gameInWords({ ...NO_GAME, outs: 7 }, { teamName: "River Nine", opponent: "Lakeside" })
 * // "River Nine against Lakeside; 2 1/3 innings pitched"
 */
export function gameInWords(
  game: Omit<GameDetails, "teamId">,
  { teamName, opponent }: { teamName: string; opponent: string },
): string {
  const sides = opponent ? `${teamName} against ${opponent}`.trim() : teamName;
  const { outs, inningsCaught, pitchesAtLastBatter, intentionalWalks } = game;
  return [
    sides,
    outs === null ? "" : `${inningsInWords(outs)} innings pitched`,
    inningsCaught === null ? "" : `${inningsCaught} innings caught`,
    pitchesAtLastBatter === null ? "" : `last batter at ${pitchesAtLastBatter}`,
    walksInWords(intentionalWalks),
  ]
    .filter((part) => part !== "")
    .join("; ");
}

function walksInWords(walks: number): string {
  if (walks === 0) return "";
  return walks === 1 ? "1 intentional walk" : `${walks} intentional walks`;
}
