import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { ThrowKind } from "./throw-entry";
import type { GameDetails } from "./validate-game";

/** What makes an imported row the same row when its file comes again; words beside the figures do not. */
export interface ImportedThrows {
  thrownOn: CalendarDay;
  kind: ThrowKind;
  pitches: number;
  game: GameDetails | null;
}

/** How the key of an imported row begins. */
export const IMPORT_KEY_PREFIX = "file|";

/**
 * The key of an imported row, unique on the log: a row of the same day, kind and figures has the same one.
 * @param nth 1 for the first row of its kind in the file, 2 for one just like it, as of two equal games of one day
 */
export function importKeyOf(athleteId: string, thrown: ImportedThrows, nth: number): string {
  const { thrownOn, kind, pitches, game } = thrown;
  const said = game
    ? [game.outs, game.inningsCaught, game.pitchesAtLastBatter, game.intentionalWalks, game.teamId]
    : [];
  return [
    `${IMPORT_KEY_PREFIX}${athleteId}`,
    thrownOn,
    kind,
    pitches,
    ...said.map((each) => each ?? ""),
    nth,
  ].join("|");
}

/**
 * The key of throws that a device kept until it could send them. With it they are on the log once, even when the answer
 * to an earlier try is long forgotten.
 * @param keptId made once, by the device
 */
export function keptKeyOf(athleteId: string, keptId: string): string {
  return ["kept", athleteId, keptId].join("|");
}
