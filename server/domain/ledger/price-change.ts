import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { addDays } from "@/server/domain/time/calendar-day";
import type { Rate } from "./rates";

/** Rates that end on another day than before; null is open again. */
export interface RateEnd {
  rateId: string;
  effectiveTo: CalendarDay | null;
}

/** What a change of price does to the list, or the first day on which it could begin. */
export type PriceChange =
  | { ok: true; added: Rate; ends: RateEnd[] }
  | { ok: false; earliestDay: CalendarDay };

/**
 * A new price from its first day on: the rate in force that day ends there, and the new one holds until the next rate
 * that was already set for later (or for good). What was charged stays as it was, so a price cannot begin on or before
 * the last day that was charged.
 * @param lastChargedOn the last day with a charge of this kind, null when nothing was charged yet
 */
export function changePrice(
  rates: readonly Rate[],
  added: Omit<Rate, "effectiveTo">,
  lastChargedOn: CalendarDay | null,
): PriceChange {
  const from = added.effectiveFrom;
  if (lastChargedOn !== null && from <= lastChargedOn) {
    return { ok: false, earliestDay: addDays(lastChargedOn, 1) };
  }
  const ofKind = rates.filter((rate) => rate.kind === added.kind);
  const later = ofKind.map((rate) => rate.effectiveFrom).filter((day) => day > from);
  const effectiveTo = later.sort()[0] ?? null;
  const ends = ofKind
    .filter((rate) => rate.effectiveFrom < from && (rate.effectiveTo === null || from < rate.effectiveTo))
    .map((rate) => ({ rateId: rate.id, effectiveTo: from }));
  return { ok: true, added: { ...added, effectiveTo }, ends };
}

/**
 * What taking a rate out again does to the one before it: that one goes on for as long as the removed one would have.
 * Nothing ends when the rate stood alone or a gap lies before it.
 */
export function endsWithout(rates: readonly Rate[], removed: Rate): RateEnd[] {
  return rates
    .filter((rate) => rate.kind === removed.kind && rate.effectiveTo === removed.effectiveFrom)
    .map((rate) => ({ rateId: rate.id, effectiveTo: removed.effectiveTo }));
}
