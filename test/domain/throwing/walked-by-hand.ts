import published from "../../reference/pitch-smart.json";

/**
 * The published rules read literally, apart from the product: its own calendar (days counted from 1970), its own table
 * (the reference file) and no look ahead by bands. To answer for a day it supposes every number of pitches in turn,
 * writes it down and walks each day of the log for a breach that touches the day.
 */
export interface Pitched {
  day: string;
  pitches: number;
}

/** Most pitches that breach nothing when added on the day, or null where the table has no row for the age. */
export function mostByHand(bornOn: string, log: readonly Pitched[], day: string): number | null {
  const row = rowAt(bornOn, day);
  if (!row) return null;
  for (let pitches = row.dailyMaxPitches; pitches >= 1; pitches -= 1) {
    if (!breachesOn(bornOn, [...log, { day, pitches }], day)) return pitches;
  }
  return 0;
}

/** The first day after `day` with room for a pitch, walked one by one; null once the table has no row for the age. */
export function firstFreeByHand(bornOn: string, log: readonly Pitched[], day: string): string | null {
  for (let ahead = 1; ahead <= 120; ahead += 1) {
    const candidate = textOf(numberOf(day) + ahead);
    const most = mostByHand(bornOn, log, candidate);
    if (most === null) return null;
    if (most > 0) return candidate;
  }
  return null;
}

/** Whether the log breaks the daily number, the rest or the rule on days in a row in a way that involves the day. */
export function breachesOn(bornOn: string, log: readonly Pitched[], day: string): boolean {
  const on = numberOf(day);
  const totals = totalsOf(log);
  if (!totals.has(on)) return false;
  if ((totals.get(on) ?? 0) > (rowAt(bornOn, day)?.dailyMaxPitches ?? Number.POSITIVE_INFINITY)) return true;
  const restBroken = [...totals].some(([pitchedOn, total]) =>
    restDaysByHand(bornOn, pitchedOn, total).some(
      (restDay) => totals.has(restDay) && (pitchedOn === on || restDay === on),
    ),
  );
  return (
    restBroken || [on - 2, on - 1, on].some((first) => [0, 1, 2].every((step) => totals.has(first + step)))
  );
}

function totalsOf(log: readonly Pitched[]): Map<number, number> {
  const totals = new Map<number, number>();
  for (const { day, pitches } of log) {
    if (pitches > 0) totals.set(numberOf(day), (totals.get(numberOf(day)) ?? 0) + pitches);
  }
  return totals;
}

function restDaysByHand(bornOn: string, pitchedOn: number, total: number): number[] {
  let restDays = 0;
  for (const band of rowAt(bornOn, textOf(pitchedOn))?.restBands ?? []) {
    if (total >= band.minPitches) restDays = band.restDays;
  }
  return Array.from({ length: restDays }, (_, index) => pitchedOn + index + 1);
}

function rowAt(bornOn: string, day: string) {
  const [bornYear = 0, bornMonth = 0, bornDay = 0] = bornOn.split("-").map(Number);
  const [year = 0, month = 0, date = 0] = day.split("-").map(Number);
  const age = year - bornYear - (month * 100 + date < bornMonth * 100 + bornDay ? 1 : 0);
  return published.tableSince2018.find((row) => row.ageMin <= age && age <= row.ageMax);
}

function numberOf(day: string): number {
  return Math.round(Date.parse(`${day}T00:00:00Z`) / 86_400_000);
}

function textOf(number: number): string {
  return new Date(number * 86_400_000).toISOString().slice(0, 10);
}
