import { type DayNumber, monthsBefore } from "@/server/domain/time/day-number";
import { type ArmRecord, type DayLoad, isPitched, numberedLoads } from "./day-load";
import type { Causes } from "./limit-reason";
import type { RuleOf } from "./rule";
import type { ThrowKind } from "./throw-entry";

/** An arm as the rules look at it, whatever the book: its loads by the number of the day, and running totals. */
export interface ArmView {
  /** Days of pitching or catching. */
  loads: ReadonlyMap<DayNumber, DayLoad>;
  /** Days of pitching, earliest first. */
  pitchedOn: readonly DayNumber[];
  /** Running totals over `pitchedOn`, one longer: the first is 0. */
  totals: Readonly<Record<CountedUnit, readonly number[]>>;
  /** What is to be thrown, where the question says it. */
  kind: ThrowKind | null;
}

/** What is added up over spans; innings begun as whole ones. */
export type CountedUnit = RuleOf<"total">["unit"] | "inningsBegun";

/** Makes the view of an arm, once for any number of days and books. */
export function armView(record: ArmRecord & { kind?: ThrowKind | null }): ArmView {
  const loads = numberedLoads(record);
  const pitched = [...loads].filter(([, load]) => isPitched(load)).sort(([a], [b]) => a - b);
  const [pitches, outs, inningsBegun] = [[0], [0], [0]];
  for (const [, load] of pitched) {
    pitches.push((pitches.at(-1) ?? 0) + load.pitches);
    outs.push((outs.at(-1) ?? 0) + load.outs);
    inningsBegun.push((inningsBegun.at(-1) ?? 0) + load.inningsBegun);
  }
  return {
    loads,
    pitchedOn: pitched.map(([day]) => day),
    totals: { pitches, outs, inningsBegun },
    kind: record.kind ?? null,
  };
}

/** The day's load where there is pitching on it. */
export function pitchedLoad(view: ArmView, day: DayNumber): DayLoad | null {
  const load = view.loads.get(day);
  return isPitched(load) ? load : null;
}

/** The loads of the days of pitching after `after`, up to `upTo` included, earliest first. */
export function loadsBetween(view: ArmView, after: DayNumber, upTo: DayNumber): DayLoad[] {
  const days = view.pitchedOn.slice(placeAfter(view, after), placeAfter(view, upTo));
  return days.flatMap((day) => pitchedLoad(view, day) ?? []);
}

/** Pitches, outs or innings begun of the days after `after`, up to `upTo` included. */
export function totalBetween(view: ArmView, unit: CountedUnit, after: DayNumber, upTo: DayNumber): number {
  const totals = view.totals[unit];
  return (totals[placeAfter(view, upTo)] ?? 0) - (totals[placeAfter(view, after)] ?? 0);
}

/** The last day before the span that ends on `day`. */
export function spanStart(over: RuleOf<"total">["over"], day: DayNumber): DayNumber {
  return "days" in over ? day - over.days : monthsBefore(day, over.months);
}

/** How many of the days of pitching are not after `day`. */
export function placeAfter({ pitchedOn }: ArmView, day: DayNumber): number {
  let low = 0;
  let high = pitchedOn.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((pitchedOn[middle] ?? Number.POSITIVE_INFINITY) <= day) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The rows that loads come from. */
export function causesOf(loads: readonly DayLoad[]): Causes {
  return {
    entryIds: loads.flatMap((load) => load.entryIds),
    plannedIds: loads.flatMap((load) => load.plannedIds),
  };
}
