/** What a radar can be read in. */
export const SPEED_UNITS = ["mph", "km_h"] as const;
export type SpeedUnit = (typeof SPEED_UNITS)[number];

/** The words of a unit. */
export const SPEED_UNIT_WORDS: Record<SpeedUnit, string> = { mph: "mph", km_h: "km/h" };

/** The least and the most a pitch is read at; outside it is a slip of the pen. Common practice, no source. */
export const SPEED_BOUNDS: Record<SpeedUnit, readonly [least: number, most: number]> = {
  mph: [20, 110],
  km_h: [32, 177],
};

/** The international mile, 1609.344 m (international yard and pound agreement, 1959). */
const KM_OF_MILE = 1.609344;

/**
 * A speed in another unit.
 * @example speedIn("km_h", 60, "mph") // 96.56064
 */
export function speedIn(unit: SpeedUnit, speed: number, readIn: SpeedUnit): number {
  if (unit === readIn) return speed;
  return unit === "km_h" ? speed * KM_OF_MILE : speed / KM_OF_MILE;
}

/**
 * A speed as it was read, to a tenth.
 * @example speedInWords(71.5, "mph") // "71.5 mph"
 */
export function speedInWords(speed: number, unit: SpeedUnit): string {
  return `${Math.round(speed * 10) / 10} ${SPEED_UNIT_WORDS[unit]}`;
}
