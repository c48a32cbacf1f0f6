import { z } from "zod";
import { isCalendarDay } from "@/server/domain/time/calendar-day";

/** Bounds of a sane book, so that a slip of the pen in a copied book is refused; common practice, no source. */
const MOST_PITCHES = 400;
const MOST_REST_DAYS = 14;

const pitchCount = z.int().min(1).max(MOST_PITCHES);
const ageYears = z.int().min(0).max(120);

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
    restBands: z.array(restBandSchema).min(1),
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

/** One line of published advice for an age range, in plain words. Advice is shown; it never changes a number. */
export const adviceLineSchema = z.strictObject({
  ageMin: ageYears,
  ageMax: ageYears,
  words: z.string().min(1),
  source: z.string().min(1),
});

/** See {@link adviceLineSchema}. */
export type AdviceLine = z.infer<typeof adviceLineSchema>;

/**
 * A rule book: dated data with its source. Ages follow each other without gap or overlap; an age outside them has
 * no published limit. `maxConsecutiveGameDays` days in a row may hold counted pitches, one more may not; null where
 * a book has no such rule. `notes` tell where its sources contradict each other.
 */
export const ruleBookSchema = z
  .strictObject({
    id: z.string().min(1),
    name: z.string().min(1),
    source: z.string().min(1),
    effectiveFrom: z.string().refine(isCalendarDay, "must be a calendar day, YYYY-MM-DD"),
    maxConsecutiveGameDays: z.int().min(1).max(7).nullable(),
    ageBands: z.array(ageBandSchema).min(1),
    advice: z.array(adviceLineSchema),
    notes: z.array(z.string().min(1)),
  })
  .superRefine((book, context) => {
    book.ageBands.forEach((band, index) => {
      const before = book.ageBands[index - 1];
      if (before && band.ageMin !== before.ageMax + 1) {
        const message = `must be ${before.ageMax + 1}, the age after the band before`;
        context.addIssue({ code: "custom", path: ["ageBands", index, "ageMin"], message });
      }
    });
  });

/** See {@link ruleBookSchema}. */
export type RuleBook = z.infer<typeof ruleBookSchema>;

/** The limits for an age in completed years, or null outside the ages the book covers: never a guess. */
export function bandForAge(book: RuleBook, age: number): AgeBand | null {
  return book.ageBands.find((band) => band.ageMin <= age && age <= band.ageMax) ?? null;
}

/**
 * Full calendar days without pitching that a day's total asks for. 0 for no pitches; a total above the daily number
 * (a batter finished, say) takes the last band.
 */
export function restDaysAfter(band: AgeBand, pitches: number): number {
  if (pitches <= 0) return 0;
  const row = band.restBands.find((rest) => pitches <= rest.maxPitches) ?? band.restBands.at(-1);
  return row?.restDays ?? 0;
}

/** The highest day's total that asks for no more than `restDays` days of rest; 0 when even one pitch asks for more. */
export function mostPitchesWithRest(band: AgeBand, restDays: number): number {
  return Math.max(
    0,
    ...band.restBands.filter((rest) => rest.restDays <= restDays).map((rest) => rest.maxPitches),
  );
}

/** The longest rest any row of the book asks for, in days: how far a throw can reach. */
export function longestRestDays(book: RuleBook): number {
  return Math.max(0, ...book.ageBands.flatMap((band) => band.restBands.map((rest) => rest.restDays)));
}

/** The published advice for an age in completed years, in the book's order; empty where it has none. */
export function adviceForAge(book: RuleBook, age: number): AdviceLine[] {
  return book.advice.filter((line) => line.ageMin <= age && age <= line.ageMax);
}

interface BandFault {
  path: (string | number)[];
  message: string;
}

function restBandFaults(bands: readonly RestBand[], dailyMaxPitches: number): BandFault[] {
  const faults: BandFault[] = [];
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
