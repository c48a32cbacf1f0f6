import { type CurrencyCode, sumCents } from "@/server/domain/money/money";
import type { MonthRow } from "./month-records";

/** The sum of some rows of a month in one currency. `key` says which: a kind, a coach id, or "all". */
export interface MonthTotal {
  key: string;
  currency: CurrencyCode;
  rowCount: number;
  minutes: number;
  pitches: number;
  amountCents: number;
}

/**
 * One total for each key and currency, by key and then currency. What is unknown in a row (null minutes or pitches)
 * adds nothing. No rows, no totals.
 */
export function totalsBy(rows: readonly MonthRow[], keyOf: (row: MonthRow) => string): MonthTotal[] {
  const groups = new Map<string, MonthRow[]>();
  for (const row of rows) {
    const group = JSON.stringify([keyOf(row), row.currency]);
    const members = groups.get(group);
    if (members === undefined) groups.set(group, [row]);
    else members.push(row);
  }
  return [...groups.values()].flatMap((group) => totalOf(group, keyOf)).sort(byKeyAndCurrency);
}

function totalOf(group: readonly MonthRow[], keyOf: (row: MonthRow) => string): MonthTotal[] {
  const [first] = group;
  if (first === undefined) return [];
  return [
    {
      key: keyOf(first),
      currency: first.currency,
      rowCount: group.length,
      minutes: group.reduce((sum, row) => sum + (row.minutes ?? 0), 0),
      pitches: group.reduce((sum, row) => sum + (row.pitches ?? 0), 0),
      amountCents: sumCents(group.map((row) => row.amountCents)),
    },
  ];
}

function byKeyAndCurrency(a: MonthTotal, b: MonthTotal): number {
  if (a.key !== b.key) return a.key < b.key ? -1 : 1;
  return a.currency < b.currency ? -1 : 1;
}
