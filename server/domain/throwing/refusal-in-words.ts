import { dayInWords } from "@/server/domain/time/words";
import type { ClearanceRefusal } from "./pain";
import type { EntryRefusal } from "./validate-entry";

/**
 * What is wrong with a log entry, for the field it stands at.
 * @example "Pitches cannot be below 0."
 */
export function entryRefusalInWords(refusal: EntryRefusal): string {
  switch (refusal.reason) {
    case "not_whole":
      return "Pitches are a whole number.";
    case "negative":
      return "Pitches cannot be below 0.";
    case "implausible":
      return `More than ${refusal.maxPitches} pitches in one entry looks like a slip: check the number.`;
    case "not_a_day":
      return NOT_A_DAY;
    case "in_the_future":
      return "The day has not come yet: the log holds what was thrown.";
    case "before_birth":
      return `The day is before the athlete was born (${dayInWords(refusal.bornOn, { withYear: true })}).`;
  }
}

/** What is wrong with a clearance, for the field it stands at. */
export function clearanceRefusalInWords(refusal: ClearanceRefusal): string {
  switch (refusal.reason) {
    case "not_a_day":
      return NOT_A_DAY;
    case "in_the_future":
      return "The day without symptoms cannot be after today.";
    case "before_the_report":
      return `It was still felt on ${dayInWords(refusal.feltOn)}: the day without symptoms cannot be before that.`;
    case "missing":
      return "Say who examined the arm.";
    case "too_long":
      return `Who examined the arm fits in ${refusal.maxLength} characters.`;
  }
}

const NOT_A_DAY = "That is not a day of the calendar.";
