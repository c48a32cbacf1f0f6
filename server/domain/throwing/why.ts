import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { capitalised } from "../text/capitalised";
import type {
  AlreadyToday,
  DailyMax,
  DaysInARow,
  LimitReason,
  NoPublishedLimit,
  OutingAhead,
  Overridden,
  PainReason,
  RestOwed,
} from "./limit-reason";
import type { PainKind } from "./pain";
import type { PitchesAllowed } from "./pitches-allowed";
import { isOtherReason, otherSentence, outsInWords } from "./why-other";
import { inWords, thrownOrPlanned } from "./why-words";

/**
 * The answer in a few words, as it stands beside a name or a time: "at most 35 by the book", "at most 5 2/3 innings by
 * the book", "none by the book", "no throwing: pain reported", "no published limit". A number is never worded as a
 * permission, and an override never as the book's: "60 by an admin's override, not by the book".
 */
export function limitInWords(answer: PitchesAllowed): string {
  const pain = answer.reasons.find((reason) => reason.kind === "pain");
  if (pain) return `no throwing: ${PAIN_WORDS[pain.painKind].toLowerCase()} reported`;
  const { pitches, outs } = answer;
  if (pitches === null && outs === null) return "no published limit";
  const isOverridden = answer.reasons.some((reason) => reason.kind === "override");
  if (isOverridden) return `${pitches} by an admin's override, not by the book`;
  if (pitches === 0) return "none by the book";
  const innings = outs === null ? "" : outsInWords(outs);
  if (pitches === null) return `at most ${innings} by the book`;
  return `at most ${pitches} by the book${innings ? `, in at most ${innings}` : ""}`;
}

/**
 * Why, in sentences a parent understands, what binds first, first; then when the arm is free again, unless a sentence
 * said so, and what is missing from the log.
 * @example ["51 on Wed 25 Nov asks for three days of rest; free again Sun 29 Nov."]
 */
export function whyInSentences(answer: PitchesAllowed): string[] {
  const sentences = answer.reasons.map((reason) => sentenceFor(reason, answer));
  const { firstFreeDay, nothingReportedSince, boundByName } = answer;
  if (boundByName) sentences.push(`This is by ${boundByName}, the strictest of the books on this day.`);
  const freeAgain = firstFreeDay ? `free again ${dayInWords(firstFreeDay)}.` : "";
  if (freeAgain && !sentences.some((sentence) => sentence.endsWith(freeAgain))) {
    sentences.push(capitalised(freeAgain));
  }
  if (nothingReportedSince) sentences.push(`Nothing reported since ${shortDay(nothingReportedSince)}: ask.`);
  return sentences;
}

/**
 * What rules that only advise have to say of the day, each a sentence that says it is no limit.
 * @example ["Advice, not a limit: one game a day by the book, and this day has one."]
 */
export function adviceInSentences(answer: PitchesAllowed): string[] {
  return answer.warnings.map(({ reason }) => {
    const sentence = sentenceFor(reason, answer);
    return `Advice, not a limit: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
  });
}

function sentenceFor(reason: LimitReason, answer: PitchesAllowed): string {
  if (isOtherReason(reason)) return otherSentence(reason, answer.firstFreeDay);
  return countSentence(reason, answer);
}

type CountReason =
  | PainReason
  | Overridden
  | NoPublishedLimit
  | RestOwed
  | DaysInARow
  | OutingAhead
  | AlreadyToday
  | DailyMax;

function countSentence(reason: CountReason, answer: PitchesAllowed): string {
  switch (reason.kind) {
    case "pain":
      return painSentence(reason);
    case "override":
      return `An admin overrode the limit: ${reason.pitches} in all on this day. That is not the book's number.`;
    case "no_published_limit":
      return `The book has no published limit for age ${reason.ageYears}.`;
    case "rest_owed":
      return restSentence(reason, answer.firstFreeDay);
    case "days_in_a_row":
      return rowSentence(reason);
    case "outing_ahead":
      return outingSentence(reason, answer.day);
    case "already_today":
      return todaySentence(reason);
    case "daily_max":
      return `The book's number for a day at age ${reason.ageYears} is ${reason.dailyMaxPitches}${reason.finishesBatter ? ", counted before a batter that is finished" : ""}.`;
  }
}

function painSentence({ painKind, feltOn, clearedBy }: PainReason): string {
  return `${PAIN_WORDS[painKind]} was reported on ${dayInWords(feltOn)}: no throwing until the ${clearedBy} clears it.`;
}

function restSentence(reason: RestOwed, firstFreeDay: CalendarDay | null): string {
  const rest = reason.restDays === 1 ? "one day of rest" : `${inWords(reason.restDays)} days of rest`;
  const planned = reason.plannedIds.length > 0 ? ` ${thrownOrPlanned(reason)}` : "";
  const begun =
    reason.countedPitches < reason.pitches ? `, ${reason.countedPitches} before the last batter,` : "";
  const over = reason.aboveDailyMax ? ", more than the book's number for a day," : "";
  const until =
    reason.freeOn === firstFreeDay
      ? `free again ${dayInWords(firstFreeDay)}`
      : `to ${dayInWords(addDays(reason.freeOn, -1))} at least`;
  return `${reason.pitches}${planned} on ${dayInWords(reason.thrownOn)}${over || begun} asks for ${rest}; ${until}.`;
}

function rowSentence(reason: DaysInARow): string {
  const days = reason.days.map((day) => dayInWords(day));
  const listed = days.length > 1 ? `${days.slice(0, -1).join(", ")} and ${days.at(-1)}` : days.join();
  return `${capitalised(thrownOrPlanned(reason))} on ${listed}: the book has no ${ORDINALS[reason.maxDays]} day in a row.`;
}

function outingSentence(reason: OutingAhead, day: CalendarDay): string {
  const outing = `the outing on ${dayInWords(reason.outingOn)}`;
  const number = `At most ${reason.totalPitches} by the book`;
  if (reason.restDaysBetween === 0) return `${number}, because ${outing} is the next day.`;
  const first = dayInWords(addDays(day, 1), { long: true }).split(" ")[0];
  if (reason.restDaysBetween === 1) return `${number}, because ${outing} needs ${first}'s rest.`;
  return `${number}, because ${outing} needs the ${inWords(reason.restDaysBetween)} days of rest before it.`;
}

function todaySentence(reason: AlreadyToday): string {
  const verb = reason.pitches === 1 ? "comes" : "come";
  return `${reason.pitches} already ${thrownOrPlanned(reason)} on this day ${verb} off that.`;
}

/** By how many came before it: the third day is the one after two. */
const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];

const PAIN_WORDS: Record<PainKind, string> = { pain: "Pain", unusual_fatigue: "Unusual fatigue" };

/** "3 Nov": a day long enough ago that its weekday says nothing. */
function shortDay(day: CalendarDay): string {
  return dayInWords(day).split(" ").slice(1).join(" ");
}
