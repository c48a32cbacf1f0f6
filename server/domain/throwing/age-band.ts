import { z } from "zod";
import { ageYears, type ListFault } from "./age-ranges";

/** Bounds of a sane book, so that a slip of the pen in a copied book is refused; common practice, no source. */
const MOST_PITCHES = 400;
const MOST_REST_DAYS = 14;

/** Pitches of one day that a book can name. */
export const pitchCount = z.int().min(1).max(MOST_PITCHES);

/** `minPitches` to `maxPitches` in one day, both included, ask for `restDays` full calendar days without pitching. */
export const restBandSchema = z.strictObject({
  minPitches: pitchCount,
  maxPitches: pitchCount,
  restDays: z.int().min(0).max(MOST_REST_DAYS),
});

/** See {@link restBandSchema}. */
export type RestBand = z.infer<typeof restBandSchema>;

/**
 * The limits for ages `ageMin` to `ageMax`, both included, in completed years.
 * Rest bands start at 1 pitch, follow each other without gap or overlap, ask for more rest as they rise and end at
 * the daily number.
 */
export const ageBandSchema = z
  .strictObject({
    ageMin: ageYears,
    ageMax: ageYears,
    dailyMaxPitches: pitchCount,
    restBands: z.array(restBandSchema).min(1).max(10),
  })
  .superRefine((band, context) => {
    if (band.ageMax < band.ageMin) {
      context.addIssue({ code: "custom", path: ["ageMax"], message: "must not be below the first age" });
    }
    for (const fault of restBandFaults(band.restBands, band.dailyMaxPitches)) {
      context.addIssue({ code: "custom", path: ["restBands", ...fault.path], message: fault.message });
    }
  });

/** See {@link ageBandSchema}. */
export type AgeBand = z.infer<typeof ageBandSchema>;

/**
 * Full calendar days without pitching that a day's total asks for. 0 for no pitches; a total above the daily number
 * (a batter finished, say) takes the last band.
 */
export function restDaysAfter(band: AgeBand, pitches: number): number {
  if (pitches <= 0) return 0;
  for (const rest of band.restBands) if (pitches <= rest.maxPitches) return rest.restDays;
  return band.restBands.at(-1)?.restDays ?? 0;
}

/** The highest day's total that asks for no more than `restDays` days of rest; 0 when even one pitch asks for more. */
export function mostPitchesWithRest(band: AgeBand, restDays: number): number {
  let most = 0;
  for (const rest of band.restBands) if (rest.restDays <= restDays) most = Math.max(most, rest.maxPitches);
  return most;
}

function restBandFaults(bands: readonly RestBand[], dailyMaxPitches: number): ListFault[] {
  const faults: ListFault[] = [];
  bands.forEach((band, index) => {
    const before = bands[index - 1];
    const expectedMin = before ? before.maxPitches + 1 : 1;
    if (band.minPitches !== expectedMin) {
      faults.push({ path: [index, "minPitches"], message: `must be ${expectedMin}: no gap and no overlap` });
    }
    if (band.maxPitches < band.minPitches) {
      faults.push({ path: [index, "maxPitches"], message: "must not be below the first pitch of the band" });
    }
    if (before && band.restDays <= before.restDays) {
      faults.push({ path: [index, "restDays"], message: "must be more rest than the band before" });
    }
  });
  if (bands.at(-1)?.maxPitches !== dailyMaxPitches) {
    faults.push({
      path: [bands.length - 1, "maxPitches"],
      message: `must end at ${dailyMaxPitches}, the daily number`,
    });
  }
  return faults;
}
