import type { CurrencyCode } from "@/server/domain/money/money";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { ChargeKind } from "./charge-kind";
import { type NoRate, type Rate, rateOn } from "./rates";

/** What one athlete owes for one session or review, before it is written down. */
export interface Charge {
  athleteId: string;
  kind: ChargeKind;
  chargedOn: CalendarDay;
  rateId: string;
  amountCents: number;
  currency: CurrencyCode;
}

/**
 * The charge for one athlete under the rate in force on the day (the site's day of the session's start, or of the
 * review's sending). A group is charged to each athlete in full: rates are a price for each athlete.
 * @returns the charge, or `no_rate` when none is in force; a price of 0 is a charge of 0, not a missing one
 */
export function chargeFor(
  done: { kind: ChargeKind; athleteId: string; day: CalendarDay },
  rates: readonly Rate[],
): { ok: true; charge: Charge } | { ok: false; refusal: NoRate } {
  const found = rateOn(rates, done.kind, done.day);
  if (!found.ok) return found;
  const { id: rateId, priceCents: amountCents, currency } = found.rate;
  const { athleteId, kind, day: chargedOn } = done;
  return { ok: true, charge: { athleteId, kind, chargedOn, rateId, amountCents, currency } };
}
