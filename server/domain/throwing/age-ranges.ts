import { z } from "zod";

/** Completed years by the basis of the book. */
export const ageYears = z.int().min(0).max(120);

/** Ages `ageMin` to `ageMax`, both included. */
export interface AgeRange {
  ageMin: number;
  ageMax: number;
}

/** What is wrong at one place of a list. */
export interface ListFault {
  path: (string | number)[];
  message: string;
}

/** The range that holds an age, or null outside all of them: never a guess. */
export function rangeForAge<Range extends AgeRange>(ranges: readonly Range[], age: number): Range | null {
  for (const range of ranges) if (range.ageMin <= age && age <= range.ageMax) return range;
  return null;
}

/**
 * What is wrong with ranges that are to follow each other without gap or overlap, youngest first; empty when nothing.
 * @example ageFaults([{ ageMin: 7, ageMax: 8 }, { ageMin: 10, ageMax: 12 }]) // [{ path: [1, "ageMin"], message: … }]
 */
export function ageFaults(ranges: readonly AgeRange[]): ListFault[] {
  return ranges.flatMap((range, index): ListFault[] => {
    const before = ranges[index - 1];
    if (range.ageMax < range.ageMin) {
      return [{ path: [index, "ageMax"], message: "must not be below the first age" }];
    }
    if (!before || range.ageMin === before.ageMax + 1) return [];
    const message = `must be ${before.ageMax + 1}, the age after the band before`;
    return [{ path: [index, "ageMin"], message }];
  });
}
