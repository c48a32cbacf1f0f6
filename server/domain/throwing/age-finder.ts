import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { type DayNumber, dayNumber, numberOf, partsOf } from "@/server/domain/time/day-number";
import type { AgeBasis } from "./rule-book";

/**
 * The age a book goes by, asked for many days of one arm: `ageByBook` in numbers, worked out anew only where a birthday
 * (or, by league age, a new year) lies between one day asked and the next.
 */
export function ageFinder(basis: AgeBasis, bornOn: CalendarDay): (day: DayNumber) => number {
  const born = partsOf(dayNumber(bornOn));
  const yearOf = basis.kind === "on_day" ? birthYear : calendarYear;
  let known = { from: Number.POSITIVE_INFINITY, until: Number.POSITIVE_INFINITY, age: 0 };
  return (day) => {
    if (day < known.from || day >= known.until) known = yearOf(day);
    return known.age;
  };

  function birthYear(day: DayNumber) {
    const { year } = partsOf(day);
    const birthday = (of: number) => numberOf(of, born.month, born.date);
    const last = birthday(year) <= day ? year : year - 1;
    return { from: birthday(last), until: birthday(last + 1), age: last - born.year };
  }

  function calendarYear(day: DayNumber) {
    const { year } = partsOf(day);
    const [month = 1, date = 1] = basis.kind === "league_age" ? basis.cutOff.split("-").map(Number) : [];
    const on = year + (basis.kind === "league_age" ? basis.yearOffset : 0);
    const hadBirthday = numberOf(on, born.month, born.date) <= numberOf(on, month, date);
    return {
      from: numberOf(year, 1, 1),
      until: numberOf(year + 1, 1, 1),
      age: on - born.year - (hadBirthday ? 0 : 1),
    };
  }
}
