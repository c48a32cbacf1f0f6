import { type Athlete, speakerFor } from "./roster";
import { logThrows } from "./throws";
import { dayFromToday, type World } from "./world";

/** Enough that an arm of eleven or twelve rests for four days by the book. */
const LATE_GAME_PITCHES = 71;

/** How long ago the late game was logged, in milliseconds. */
export const LATE_GAME_AGO_MS = 25 * 60_000;

/** A game of yesterday that was logged this very hour, after a bullpen for the next days had been booked. */
export function logLateGame(world: World, athlete: Athlete): void {
  if (athlete.part !== "late_game") return;
  const day = dayFromToday(world, -1);
  const throws = { day, kind: "game", pitches: LATE_GAME_PITCHES } as const;
  const reportedAtMs = world.nowMs - LATE_GAME_AGO_MS;
  logThrows(world, athlete, { ...throws, reportedBy: speakerFor(athlete, day), reportedAtMs });
}
