import { inningsInWords } from "./innings";
import type { ThrowKind } from "./throw-entry";

/** More innings than this in one entry are taken for a slip of the pen; common practice, no source. */
export const MOST_INNINGS_CAUGHT = 20;

/** The same for outs got as the pitcher: twenty innings. */
export const MOST_OUTS = 60;

/** More announced intentional walks than this in one entry are taken for a slip; common practice, no source. */
export const MOST_INTENTIONAL_WALKS = 20;

/** Longest name of a team, of the athlete's own or of the other side. */
export const TEAM_NAME_MAX_LENGTH = 80;

/** What a game says beside its pitches. Null where nobody said. */
export interface GameDetails {
  /** Thirds of an inning. */
  outs: number | null;
  inningsCaught: number | null;
  /** The count before the first pitch to the last batter. */
  pitchesAtLastBatter: number | null;
  /** Announced ones, for which no pitch was thrown. */
  intentionalWalks: number;
  teamId: string | null;
}

/** An entry of which nothing was said beside its pitches. */
export const NO_GAME: GameDetails = {
  outs: null,
  inningsCaught: null,
  pitchesAtLastBatter: null,
  intentionalWalks: 0,
  teamId: null,
};

const GAME_KINDS: readonly ThrowKind[] = ["game", "live_at_bats", "showcase"];

/** Whether an entry of this kind can say outs, catching, walks and a team. */
export function hasGameDetails(kind: ThrowKind): boolean {
  return GAME_KINDS.includes(kind);
}

/**
 * What is wrong with the details of a game, in a sentence, or null.
 * @param game with the entry's own kind and pitches; those are held against `entryRefusals`, not here
 * @param ownTeamIds the athlete's teams, ended ones too: a game can be logged late
 * @example gameProblem({ ...NO_GAME, kind: "game", pitches: 40, pitchesAtLastBatter: 41 }, [])
 * // "The last batter cannot have come up after more pitches than were thrown (40)."
 */
export function gameProblem(
  game: GameDetails & { kind: ThrowKind; pitches: number },
  ownTeamIds: readonly string[],
): string | null {
  if (!hasGameDetails(game.kind))
    return saysNothing(game) ? null : "Innings, walks and a team belong to a game.";
  return (
    outsProblem(game.outs) ??
    caughtProblem(game.inningsCaught) ??
    lastBatterProblem(game.pitchesAtLastBatter, game.pitches) ??
    walksProblem(game.intentionalWalks) ??
    (game.teamId === null || ownTeamIds.includes(game.teamId) ? null : "That is not a team of this athlete.")
  );
}

function saysNothing(game: GameDetails): boolean {
  const { outs, inningsCaught, pitchesAtLastBatter, intentionalWalks, teamId } = game;
  const said = [outs, inningsCaught, pitchesAtLastBatter, teamId].some((each) => each !== null);
  return !said && intentionalWalks === 0;
}

const isCount = (count: number) => Number.isInteger(count) && count >= 0;

function outsProblem(outs: number | null): string | null {
  if (outs === null) return null;
  if (!isCount(outs)) return "Innings pitched are whole innings and thirds, 0 or more.";
  if (outs <= MOST_OUTS) return null;
  return `More than ${inningsInWords(MOST_OUTS)} innings pitched in one entry looks like a slip: check the number.`;
}

function caughtProblem(innings: number | null): string | null {
  if (innings === null) return null;
  if (!isCount(innings))
    return "Innings caught are a whole number, 0 or more: an inning begun counts as one.";
  if (innings <= MOST_INNINGS_CAUGHT) return null;
  return `More than ${MOST_INNINGS_CAUGHT} innings caught in one entry looks like a slip: check the number.`;
}

function lastBatterProblem(count: number | null, pitches: number): string | null {
  if (count === null) return null;
  if (!isCount(count)) return "The count at the last batter is a whole number, 0 or more.";
  if (count <= pitches) return null;
  return `The last batter cannot have come up after more pitches than were thrown (${pitches}).`;
}

function walksProblem(walks: number): string | null {
  if (!isCount(walks)) return "Intentional walks are a whole number, 0 or more.";
  if (walks <= MOST_INTENTIONAL_WALKS) return null;
  return `More than ${MOST_INTENTIONAL_WALKS} intentional walks in one entry looks like a slip: check the number.`;
}
