import type { CurrencyCode } from "@/server/domain/money/money";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { ChargeKind } from "./charge-kind";

/** The price of one kind, for each athlete, on the days `[effectiveFrom, effectiveTo)`; null has no end. */
export interface Rate {
  id: string;
  kind: ChargeKind;
  priceCents: number;
  currency: CurrencyCode;
  effectiveFrom: CalendarDay;
  /** The first day that it no longer holds. */
  effectiveTo: CalendarDay | null;
}

/** Nothing is priced for the kind on the day. */
export interface NoRate {
  reason: "no_rate";
  kind: ChargeKind;
  day: CalendarDay;
}

/** What is wrong with a list of rates: two of a kind hold on one day, or one holds on no day at all. */
export type RateFault =
  | { reason: "rates_overlap"; kind: ChargeKind; rateIds: [string, string]; day: CalendarDay }
  | { reason: "rate_never_holds"; rateId: string };

/**
 * The rate in force for a kind on a day; a change of price holds from its first day on.
 * @throws Error when two are: {@link checkRates} was not asked before they were saved
 */
export function rateOn(
  rates: readonly Rate[],
  kind: ChargeKind,
  day: CalendarDay,
): { ok: true; rate: Rate } | { ok: false; refusal: NoRate } {
  const [rate, second] = rates.filter((one) => one.kind === kind && holdsOn(one, day));
  if (rate === undefined) return { ok: false, refusal: { reason: "no_rate", kind, day } };
  if (second !== undefined) throw new Error(`Rates ${rate.id} and ${second.id} both hold on ${day}`);
  return { ok: true, rate };
}

/**
 * Every fault of the list; none when each kind has at most one rate on each day. Gaps are allowed: a kind that is not
 * offered has no price. `day` of an overlap is the first day that both hold on.
 */
export function checkRates(rates: readonly Rate[]): RateFault[] {
  const empty = rates.filter((rate) => rate.effectiveTo !== null && rate.effectiveTo <= rate.effectiveFrom);
  const faults: RateFault[] = empty.map(({ id: rateId }) => ({ reason: "rate_never_holds", rateId }));
  const held = rates.filter((rate) => !empty.includes(rate));
  held.forEach((rate, index) => {
    for (const other of held.slice(index + 1)) {
      const day = later(rate.effectiveFrom, other.effectiveFrom);
      if (rate.kind !== other.kind || !holdsOn(rate, day) || !holdsOn(other, day)) continue;
      faults.push({ reason: "rates_overlap", kind: rate.kind, rateIds: [rate.id, other.id], day });
    }
  });
  return faults;
}

function holdsOn(rate: Rate, day: CalendarDay): boolean {
  return rate.effectiveFrom <= day && (rate.effectiveTo === null || day < rate.effectiveTo);
}

function later(one: CalendarDay, other: CalendarDay): CalendarDay {
  if (one > other) return one;
  return other;
}
