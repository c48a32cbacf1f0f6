import { type CurrencyCode, sumCents } from "@/server/domain/money/money";
import type { MonthCharge, MonthRow } from "./month-records";

/** One thing to mend before the month adds up both ways. */
export type MonthDifference =
  | { difference: "no_charge"; referenceId: string; athleteId: string }
  | { difference: "charged_though_not_held"; referenceId: string; athleteId: string; amountCents: number }
  | { difference: "charge_without_row"; chargeId: string }
  | { difference: "charge_differs_from_rate"; chargeId: string; rateCents: number; amountCents: number }
  | { difference: "totals_differ"; currency: CurrencyCode; fromRowsCents: number; fromChargesCents: number };

/**
 * What keeps rows and charges of a month from saying the same; nothing when they agree. A session that was held, and a
 * review that was sent, asks for a charge (one that was reversed counts as asked for); one that was not held may not
 * be left with an amount; each charge belongs to one row; a charge that was not a reversal is the price of its rate;
 * and the sum of the rows is the sum of the charges in each currency.
 */
export function monthDifferences(
  rows: readonly MonthRow[],
  charges: readonly MonthCharge[],
): MonthDifference[] {
  const placed = new Set(rows.flatMap((row) => row.chargeIds));
  return [
    ...rows.flatMap(rowDifference),
    ...charges
      .filter((charge) => !placed.has(charge.id))
      .map((charge) => ({ difference: "charge_without_row" as const, chargeId: charge.id })),
    ...charges
      .filter((charge) => charge.reversesId === null && charge.amountCents !== charge.rateCents)
      .map(({ id: chargeId, rateCents, amountCents }) => ({
        ...{ difference: "charge_differs_from_rate" as const, chargeId, rateCents, amountCents },
      })),
    ...totalsDiffer(rows, charges),
  ];
}

function rowDifference(row: MonthRow): MonthDifference[] {
  const { referenceId, athleteId, amountCents } = row;
  const wasHeld = row.state === "logged" || row.state === "sent";
  if (wasHeld && row.chargeIds.length === 0) return [{ difference: "no_charge", referenceId, athleteId }];
  if (wasHeld || amountCents === 0) return [];
  return [{ difference: "charged_though_not_held", referenceId, athleteId, amountCents }];
}

function totalsDiffer(rows: readonly MonthRow[], charges: readonly MonthCharge[]): MonthDifference[] {
  const currencies = new Set([...rows, ...charges].map((one) => one.currency));
  return [...currencies].sort().flatMap((currency) => {
    const [fromRowsCents, fromChargesCents] = [rows, charges].map((list) =>
      sumCents(list.filter((one) => one.currency === currency).map((one) => one.amountCents)),
    );
    if (fromRowsCents === undefined || fromChargesCents === undefined) return [];
    if (fromRowsCents === fromChargesCents) return [];
    return [{ difference: "totals_differ" as const, currency, fromRowsCents, fromChargesCents }];
  });
}
