import { addDays, addMonths, type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import { monthInWords } from "@/server/domain/time/words";

/** Days from `startDay` up to but not with `endDay`. */
export interface TimeAxis {
  startDay: CalendarDay;
  endDay: CalendarDay;
}

/** One month's first day on an axis. */
export interface MonthTick {
  day: CalendarDay;
  /** "Sep"; with its year in January and at the first tick: "Jan 2027". */
  label: string;
}

/** How many days an axis has; never less than one. */
export function daysOn(axis: TimeAxis): number {
  return Math.max(1, daysBetween(axis.startDay, axis.endDay));
}

/** Where a day begins on an axis, 0 at its start to 1 at its end; days outside stand at the nearer end. */
export function placeOn(axis: TimeAxis, day: CalendarDay): number {
  return Math.min(1, Math.max(0, daysBetween(axis.startDay, day) / daysOn(axis)));
}

/** A share of the axis as SVG writes it, to a hundredth of a percent. */
export function asPercent(share: number): string {
  return `${Math.round(share * 10_000) / 100}%`;
}

/** The first days of months that lie on the axis, earliest first; none on an axis within one month. */
export function monthTicks(axis: TimeAxis): MonthTick[] {
  const ticks: MonthTick[] = [];
  const monthStart = `${axis.startDay.slice(0, 7)}-01`;
  let day = monthStart === axis.startDay ? monthStart : addMonths(monthStart, 1);
  while (day < axis.endDay) {
    const [month = "", year = ""] = monthInWords(day.slice(0, 7)).split(" ");
    const isYearShown = ticks.length === 0 || day.slice(5, 7) === "01";
    ticks.push({ day, label: isYearShown ? `${month.slice(0, 3)} ${year}` : month.slice(0, 3) });
    day = addMonths(day, 1);
  }
  return ticks;
}

/** The narrowest axis of whole months that holds every given day; null without days. */
export function axisOver(days: readonly CalendarDay[]): TimeAxis | null {
  const sorted = [...days].sort();
  const first = sorted[0];
  const last = sorted.at(-1);
  if (first === undefined || last === undefined) return null;
  const endMonth = addDays(last, 1);
  const isMonthStart = endMonth.endsWith("-01");
  return {
    startDay: `${first.slice(0, 7)}-01`,
    endDay: isMonthStart ? endMonth : addMonths(`${endMonth.slice(0, 7)}-01`, 1),
  };
}
