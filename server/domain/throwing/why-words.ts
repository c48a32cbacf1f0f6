import type { Causes } from "./limit-reason";

/** A small number as a word, above ten as figures. @example inWords(3) // "three" */
export function inWords(count: number): string {
  return COUNT_WORDS[count] ?? String(count);
}

/** Whether the rows behind a reason were thrown, are planned, or both. */
export function thrownOrPlanned({ entryIds, plannedIds }: Causes): string {
  if (plannedIds.length === 0) return "thrown";
  return entryIds.length === 0 ? "planned" : "thrown or planned";
}

const COUNT_WORDS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
