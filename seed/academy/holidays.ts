import { addDays, type CalendarDay, weekdayOf } from "@/server/domain/time/calendar-day";
import { dayFromToday, FOUNDED_DAYS, type World } from "./world";

/** A day on which the academy is closed. */
export interface Holiday {
  day: CalendarDay;
  reason: string;
}

const FIXED = [
  { date: "01-01", reason: "New Year's Day" },
  { date: "07-04", reason: "Fourth of July" },
  { date: "12-24", reason: "Christmas Eve" },
  { date: "12-25", reason: "Christmas Day" },
];

/** Calendar years that are touched by all that is behind and the year ahead. */
const YEARS = 6;

/** The closed days since the academy is there and of a year ahead. The demo itself is always open today. */
export function holidaysAround(world: World): Holiday[] {
  const first = dayFromToday(world, -FOUNDED_DAYS);
  const last = dayFromToday(world, 365);
  const firstYear = Number(first.slice(0, 4));
  return Array.from({ length: YEARS }, (_, ahead) => holidaysOf(firstYear + ahead))
    .flat()
    .filter(({ day }) => first <= day && day <= last && day !== world.today);
}

/** The closed days of a year, earliest first. Labor Day: first Monday of September; Thanksgiving: fourth Thursday of November. */
export function holidaysOf(year: number): Holiday[] {
  return [
    ...FIXED.map(({ date, reason }) => ({ day: `${year}-${date}`, reason })),
    { day: nthWeekday(`${year}-09-01`, 1, 1), reason: "Labor Day" },
    { day: nthWeekday(`${year}-11-01`, 4, 4), reason: "Thanksgiving" },
  ].sort((a, b) => a.day.localeCompare(b.day));
}

function nthWeekday(monthStart: CalendarDay, weekday: number, nth: number): CalendarDay {
  const ahead = (weekday - weekdayOf(monthStart) + 7) % 7;
  return addDays(monthStart, ahead + 7 * (nth - 1));
}
