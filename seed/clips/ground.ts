/** A portable mound as used indoors: metres, x toward the plate from the front edge of the rubber. */
export const MOUND = {
  topM: 0.254,
  backM: -0.75,
  slopeFromM: 0.15,
  /** One inch of fall for each foot. */
  fall: 1 / 12,
  halfWidthM: 0.62,
} as const;

/** Where the mound meets the floor in front. */
export const MOUND_TOE_M = MOUND.slopeFromM + MOUND.topM / MOUND.fall;

/**
 * Height of the ground above the floor at a place between rubber and plate, in metres: 10 inches at the rubber, falling an
 * inch a foot from half a foot in front of it (field dimensions of the official rules, from memory).
 * @example groundHeightM(0) // 0.254
 */
export function groundHeightM(xM: number): number {
  return Math.max(0, MOUND.topM - Math.max(0, xM - MOUND.slopeFromM) * MOUND.fall);
}

/** Distance from rubber to plate in metres by age: 46 feet up to 12, 54 at 13, 60 feet 6 inches from 14 (from memory). */
export function plateDistanceM(ageYears: number): number {
  if (ageYears < 13) return 14.02;
  return ageYears < 14 ? 16.46 : 18.44;
}
