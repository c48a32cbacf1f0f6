/** Centimetres in an inch, by definition (the international inch, 1959: 25.4 mm). */
const CM_PER_INCH = 2.54;

/**
 * A height in both units, since families use either; inches to the nearest whole one.
 * @example heightInWords(178) // "178 cm (5 ft 10 in)"
 */
export function heightInWords(heightCm: number): string {
  const inches = Math.round(heightCm / CM_PER_INCH);
  return `${heightCm} cm (${Math.floor(inches / 12)} ft ${inches % 12} in)`;
}
