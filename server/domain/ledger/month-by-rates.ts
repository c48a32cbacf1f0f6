import { type CurrencyCode, sumCents } from "@/server/domain/money/money";
import type { MonthCharge, MonthRow } from "./month-records";
import { type Rate, rateOn } from "./rates";

/**
 * What a month comes to by the work alone: each row that was held, at the rate in force on its day, without a look at
 * any amount that was charged. Work whose charge was taken back counts nothing, and work without a price counts nothing
 * (it is among the things to mend).
 * @returns one sum for each currency, by currency; none when nothing was held
 */
export function monthByRates(
  rows: readonly MonthRow[],
  charges: readonly MonthCharge[],
  rates: readonly Rate[],
): { currency: CurrencyCode; amountCents: number }[] {
  const takenBack = new Set(charges.flatMap(({ reversesId }) => (reversesId === null ? [] : [reversesId])));
  const prices = rows
    .filter((row) => row.state === "logged" || row.state === "sent")
    .filter((row) => !row.chargeIds.some((id) => takenBack.has(id)))
    .flatMap((row) => {
      const found = rateOn(rates, row.kind, row.day);
      return found.ok ? [found.rate] : [];
    });
  const currencies = [...new Set(prices.map((rate) => rate.currency))].sort();
  return currencies.map((currency) => ({
    currency,
    amountCents: sumCents(prices.filter((one) => one.currency === currency).map((one) => one.priceCents)),
  }));
}
