import { SPEED_BOUNDS, SPEED_UNIT_WORDS, type SpeedUnit, speedInWords } from "./radar-speed";

/** What may be counted beside the pitches of a session; context only, no limit goes by it. Null where nobody did. */
export interface CountedPitches {
  /** How many of the pitches were strikes. */
  strikes: number | null;
  /** The fastest pitch by radar, in the unit it was read in; both or neither. */
  topSpeed: number | null;
  speedUnit: SpeedUnit | null;
}

/** Nobody counted and no radar was read. */
export const UNCOUNTED: CountedPitches = { strikes: null, topSpeed: null, speedUnit: null };

/** Which count cannot be, and why. */
export interface CountProblem {
  count: "strikes" | "speed";
  why: string;
}

/**
 * What cannot be among the counts of so many pitches: more strikes than pitches, a speed of no pitch, without its unit, or
 * outside of what a pitch is read at.
 */
export function countProblems(
  pitches: number,
  { strikes, topSpeed, speedUnit }: CountedPitches,
): CountProblem[] {
  const ofStrikes = strikes !== null && strikes > pitches ? "There are no more strikes than pitches." : null;
  const ofSpeed = speedProblem(pitches, topSpeed, speedUnit);
  return [
    ...(ofStrikes === null ? [] : [{ count: "strikes" as const, why: ofStrikes }]),
    ...(ofSpeed === null ? [] : [{ count: "speed" as const, why: ofSpeed }]),
  ];
}

function speedProblem(pitches: number, speed: number | null, unit: SpeedUnit | null): string | null {
  if (speed === null && unit === null) return null;
  if (speed === null || unit === null) return "A speed by radar has its unit, and a unit its speed.";
  if (pitches === 0) return "Without a pitch there is no speed to log.";
  const [least, most] = SPEED_BOUNDS[unit];
  if (speed >= least && speed <= most) return null;
  return `A pitch is read at ${least} to ${most} ${SPEED_UNIT_WORDS[unit]}.`;
}

/**
 * What was counted beside the pitches, a part for each count that was made.
 * @example ["14 strikes", "fastest 71.5 mph"]
 */
export function countsInWords({ strikes, topSpeed, speedUnit }: CountedPitches): string[] {
  const counted = strikes === null ? [] : [strikes === 1 ? "1 strike" : `${strikes} strikes`];
  const read = topSpeed === null || !speedUnit ? [] : [`fastest ${speedInWords(topSpeed, speedUnit)}`];
  return [...counted, ...read];
}
