import { type CurrencyCode, sumCents } from "@/server/domain/money/money";
import type { MonthCharge, MonthRow } from "./month-records";
import { type Rate, rateOn } from "./rates";

/** One sum in one currency. */
export interface CurrencySum {
  currency: CurrencyCode;
  amountCents: number;
}

/**
 * What a month comes to by the work alone, without a look at any amount that was charged: each row of the month that
 * was held counts once at the rate in force on its day, and each charge that was taken back this month counts once the
 * other way, whichever month it was of. Work without a price counts nothing; it is among the things to mend.
 * @param month.rows as the month's books give them
 * @returns one sum for each currency, by currency; none when nothing was held or taken back
 */
export function monthByRates(
  month: { month: string; rows: readonly MonthRow[]; charges: readonly MonthCharge[] },
  rates: readonly Rate[],
): CurrencySum[] {
  const reversals = new Set(
    month.charges.filter((charge) => charge.reversesId !== null).map((charge) => charge.id),
  );
  const prices = month.rows
    .filter((row) => row.state === "logged" || row.state === "sent")
    .flatMap((row) => {
      const found = rateOn(rates, row.kind, row.day);
      if (!found.ok) return [];
      const held = row.day.startsWith(`${month.month}-`) ? 1 : 0;
      const times = held - row.chargeIds.filter((id) => reversals.has(id)).length;
      return [{ currency: found.rate.currency, amountCents: times * found.rate.priceCents }];
    });
  const currencies = [...new Set(prices.map((price) => price.currency))].sort();
  return currencies.map((currency) => ({
    currency,
    amountCents: sumCents(prices.filter((one) => one.currency === currency).map((one) => one.amountCents)),
  }));
}
