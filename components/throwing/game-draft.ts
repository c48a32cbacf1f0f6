import { inningsInWords, outsOfInnings } from "@/server/domain/throwing/innings";
import type { ThrowKind } from "@/server/domain/throwing/throw-entry";
import { hasGameDetails } from "@/server/domain/throwing/validate-game";
import type { LogRow } from "./arm-answer";
import type { ThrowsToLog } from "./kept-throws";

/** What is told of a game while it is being typed; numbers are null while nothing is said. */
export interface GameDraft {
  innings: string;
  inningsCaught: number | null;
  pitchesAtLastBatter: number | null;
  intentionalWalks: number | null;
  teamId: string | null;
  opponent: string;
}

/** A game of which nothing was told yet. */
export const NO_DRAFT: GameDraft = {
  innings: "",
  inningsCaught: null,
  pitchesAtLastBatter: null,
  intentionalWalks: null,
  teamId: null,
  opponent: "",
};

/** What a row of the log says of its game, to be gone on with. */
export function draftOf(row: LogRow): GameDraft {
  const { outs, inningsCaught, pitchesAtLastBatter, intentionalWalks, teamId, opponent } = row;
  return {
    innings: outs === null ? "" : inningsInWords(outs),
    intentionalWalks: intentionalWalks === 0 ? null : intentionalWalks,
    ...{ inningsCaught, pitchesAtLastBatter, teamId, opponent },
  };
}

/** What is wrong with the innings as they are typed, for their field, or undefined; empty says nothing and is fine. */
export function inningsProblem(typed: string): string | undefined {
  if (typed.trim() === "" || outsOfInnings(typed) !== null) return undefined;
  return "Write whole innings and thirds, as 2 or 2 1/3.";
}

/** The game as the log takes it: null for throws that are none, and for a game of which nothing is said. */
export function gameOf(kind: ThrowKind, draft: GameDraft): ThrowsToLog["game"] {
  if (!hasGameDetails(kind)) return null;
  const { innings, intentionalWalks, opponent, ...told } = draft;
  const outs = outsOfInnings(innings);
  const game = { ...told, outs, intentionalWalks: intentionalWalks ?? 0, opponent: opponent.trim() };
  const { intentionalWalks: walks, opponent: against, ...facts } = game;
  const isSilent = Object.values(facts).every((said) => said === null) && walks === 0 && against === "";
  return isSilent ? null : game;
}
