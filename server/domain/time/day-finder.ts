import { addDays, type CalendarDay, dayOf, daysBetween, instantOf } from "./calendar-day";

/**
 * {@link dayOf} for many instants of one zone: those from `fromDay` to `toDay`, both included, are looked up among the
 * midnights between, which costs a hundredth of asking the calendar. All others are asked for one by one.
 * @throws RangeError when the zone does not exist (the caller's fault)
 */
export function dayFinder(
  zone: string,
  fromDay: CalendarDay,
  toDay: CalendarDay,
): (instantMs: number) => CalendarDay {
  const days = Array.from({ length: daysBetween(fromDay, toDay) + 1 }, (_, index) => addDays(fromDay, index));
  const midnights = [...days, addDays(toDay, 1)].map((day) => instantOf(day, 0, zone));
  const first = midnights[0] ?? 0;
  const end = midnights.at(-1) ?? 0;
  return (instantMs) => {
    if (instantMs < first || instantMs >= end) return dayOf(instantMs, zone);
    return days[lastAtMost(midnights, instantMs)] ?? dayOf(instantMs, zone);
  };
}

/** The place of the last of rising numbers that is not above `value`; the first is not above it. */
function lastAtMost(rising: readonly number[], value: number): number {
  let low = 0;
  let high = rising.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? Number.POSITIVE_INFINITY) <= value) low = middle;
    else high = middle;
  }
  return low;
}
