import { addDays, addMonths, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayNumber } from "@/server/domain/time/day-number";
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
  return Math.max(1, dayNumber(axis.endDay) - dayNumber(axis.startDay));
}

/** Where a day begins on an axis, 0 at its start to 1 at its end; days outside stand at the nearer end. */
export function placeOn(axis: TimeAxis, day: CalendarDay): number {
  const days = dayNumber(day) - dayNumber(axis.startDay);
  return Math.min(1, Math.max(0, days / daysOn(axis)));
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
    ticks.push({ day, label: tickWords(day, ticks.length === 0) });
    day = addMonths(day, 1);
  }
  return ticks;
}

/** How many months may lie between two ticks: one, a quarter, a half, whole years. */
const TICK_MONTHS = [1, 3, 6, 12, 24, 60, 120];

/** A month's words with its year and the air beside them, at the axis's size of letters. */
const TICK_ROOM_PX = 64;

/** The fewest days of a month. */
const SHORTEST_MONTH = 28;

/**
 * {@link monthTicks} on a drawing of some width, thinned out until no two words touch and none runs past its end.
 * @example three years on 900 px: every half year; on 300 px: every January
 */
export function thinTicks(axis: TimeAxis, widthPx: number): MonthTick[] {
  const dayPx = widthPx / daysOn(axis);
  const step = TICK_MONTHS.find((months) => months * SHORTEST_MONTH * dayPx >= TICK_ROOM_PX) ?? 120;
  return monthTicks(axis)
    .filter(({ day }) => monthsOf(day) % step === 0)
    .filter(({ day }) => (1 - placeOn(axis, day)) * widthPx >= TICK_ROOM_PX)
    .map(({ day }, index) => ({ day, label: tickWords(day, index === 0) }));
}

const monthsOf = (day: CalendarDay) => Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7)) - 1;

function tickWords(day: CalendarDay, isFirst: boolean): string {
  const [month = "", year = ""] = monthInWords(day.slice(0, 7)).split(" ");
  return isFirst || day.slice(5, 7) === "01" ? `${month.slice(0, 3)} ${year}` : month.slice(0, 3);
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
