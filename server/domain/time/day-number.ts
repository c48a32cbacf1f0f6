import type { CalendarDay } from "./calendar-day";

/*
 * Calendar days as whole numbers, for rules that weigh hundreds of days of thousands of arms: a hundred times quicker
 * than asking the calendar, and equal to it (a test holds both together). The proleptic Gregorian calendar, ISO 8601.
 */

/** A calendar day as days since 1 January 1970; negative before it. */
export type DayNumber = number;

/**
 * The number of a calendar day.
 * @param day a day that exists; others give the number their parts add up to
 * @example dayNumber("1970-01-02") // 1
 */
export function dayNumber(day: CalendarDay): DayNumber {
  return numberOf(Number(day.slice(0, 4)), Number(day.slice(5, 7)), Number(day.slice(8, 10)));
}

/** The calendar day of a number, for years 0 to 9999. The inverse of {@link dayNumber}. */
export function dayOfNumber(number: DayNumber): CalendarDay {
  const { year, month, date } = partsOf(number);
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(date, 2)}`;
}

/**
 * The number of a day by its parts. 29 February of a common year is 1 March, as a birthday is.
 * @param month 1 to 12
 */
export function numberOf(year: number, month: number, date: number): DayNumber {
  // Years are taken to begin in March, so that a leap day is the last of one.
  const shifted = month > 2 ? year : year - 1;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + date - 1;
  const leapDays = Math.floor(shifted / 4) - Math.floor(shifted / 100) + Math.floor(shifted / 400);
  return shifted * 365 + leapDays + dayOfYear - 719_468;
}

/** Year, month (1 to 12) and day of the month. */
export function partsOf(number: DayNumber): { year: number; month: number; date: number } {
  const days = number + 719_468;
  const era = Math.floor(days / 146_097);
  const ofEra = days - era * 146_097;
  const yearOfEra = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365,
  );
  const ofYear = ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * ofYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const date = ofYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  return { year: era * 400 + yearOfEra + (month <= 2 ? 1 : 0), month, date };
}

/** The day `months` before; the last day of a shorter month stands in, as with `addMonths`. */
export function monthsBefore(number: DayNumber, months: number): DayNumber {
  const { year, month, date } = partsOf(number);
  const total = year * 12 + (month - 1) - months;
  const [toYear, toMonth] = [Math.floor(total / 12), (((total % 12) + 12) % 12) + 1];
  const lastDate =
    numberOf(toMonth === 12 ? toYear + 1 : toYear, (toMonth % 12) + 1, 1) - numberOf(toYear, toMonth, 1);
  return numberOf(toYear, toMonth, Math.min(date, lastDate));
}

function padded(value: number, length: number): string {
  return String(value).padStart(length, "0");
}
