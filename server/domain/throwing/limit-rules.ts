import { addDays, type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import { type AgeBand, mostPitchesWithRest, restDaysAfter } from "./age-band";
import type { DayLoad } from "./day-load";
import type { Causes, DaysInARow, OutingAhead, RestOwed } from "./limit-reason";
import { ageByBook, bandForAge, isInForce, type RuleBook, rulesOf } from "./rule-book";

/** One arm on one day, as the rules see it. Days are looked at as the age then, so a birthday needs no care. */
export interface Standing {
  bornOn: CalendarDay;
  book: RuleBook;
  loads: ReadonlyMap<CalendarDay, DayLoad>;
  day: CalendarDay;
  /** The limits for the age on `day`. */
  band: AgeBand;
}

/**
 * Every earlier day whose rest covers this one, the longest lasting first. The age on the day of the throw decides
 * its rest: a birthday in between changes nothing. A throw at an age without a published limit owes none.
 */
export function restOwed({ bornOn, book, loads, day }: Standing): RestOwed[] {
  return loadsWithin(loads, day, -longestRestDays(book))
    .flatMap((load): RestOwed[] => {
      const band = bandForAge(book, ageByBook(book.ageBasis, bornOn, load.day), load.day);
      if (!band) return [];
      const restDays = restDaysAfter(band, load.pitches);
      const freeOn = addDays(load.day, restDays + 1);
      if (freeOn <= day) return [];
      const aboveDailyMax = load.pitches > band.dailyMaxPitches;
      return [{ kind: "rest_owed", thrownOn: load.day, ...factsOf([load]), restDays, freeOn, aboveDailyMax }];
    })
    .toSorted((a, b) => b.freeOn.localeCompare(a.freeOn));
}

/**
 * The days that would stand in a row with this one and be too many, before it or after it; null when they would not.
 * The guideline speaks of appearing in games; every day with counted pitches is taken for one (the cautious reading).
 */
export function daysInARow({ book, loads, day }: Standing): DaysInARow | null {
  const rule = rulesOf(book, "days_in_a_row").find((each) => each.level === "limit" && isInForce(each, day));
  if (!rule) return null;
  const { maxDays } = rule;
  const row = [...runFrom(loads, day, -1, maxDays).toReversed(), ...runFrom(loads, day, 1, maxDays)];
  if (row.length < maxDays) return null;
  const { entryIds, plannedIds } = factsOf(row);
  return { kind: "days_in_a_row", days: row.map((load) => load.day), maxDays, entryIds, plannedIds };
}

/** What the nearest later throwing leaves for this day's total; null when it leaves the whole daily number. */
export function outingAhead({ book, loads, day, band }: Standing): OutingAhead | null {
  const outing = loadsWithin(loads, day, longestRestDays(book))[0];
  if (!outing) return null;
  const restDaysBetween = daysBetween(day, outing.day) - 1;
  const totalPitches = mostPitchesWithRest(band, restDaysBetween);
  if (totalPitches >= band.dailyMaxPitches) return null;
  const { entryIds, plannedIds } = factsOf([outing]);
  return { kind: "outing_ahead", outingOn: outing.day, restDaysBetween, totalPitches, entryIds, plannedIds };
}

/** The longest rest any row of the book asks for, in days: how far a throw can reach. */
export function longestRestDays(book: RuleBook): number {
  const bands = rulesOf(book, "pitch_count").flatMap((rule) => rule.ageBands);
  return Math.max(0, ...bands.flatMap((band) => band.restBands.map((rest) => rest.restDays)));
}

/** The loads of the days after `day` (a negative reach: before it), nearest first; `day` itself is not among them. */
function loadsWithin(loads: Standing["loads"], day: CalendarDay, reachDays: number): DayLoad[] {
  const direction = Math.sign(reachDays);
  return Array.from({ length: Math.abs(reachDays) }, (_, index) =>
    loads.get(addDays(day, direction * (index + 1))),
  ).filter((load) => load !== undefined);
}

/** The unbroken run of loads that begins beside `day`, nearest first, at most `maxDays` long. */
function runFrom(loads: Standing["loads"], day: CalendarDay, direction: 1 | -1, maxDays: number): DayLoad[] {
  const run: DayLoad[] = [];
  while (run.length < maxDays) {
    const next = loads.get(addDays(day, direction * (run.length + 1)));
    if (!next) break;
    run.push(next);
  }
  return run;
}

function factsOf(loads: readonly DayLoad[]): Causes & { pitches: number } {
  return {
    pitches: loads.reduce((total, load) => total + load.pitches, 0),
    entryIds: loads.flatMap((load) => load.entryIds),
    plannedIds: loads.flatMap((load) => load.plannedIds),
  };
}
