import { OF_AGE_YEARS } from "@/server/domain/people/person";
import { addDays, ageOn, type CalendarDay, daysBetween } from "@/server/domain/time/calendar-day";
import type { AgeBand } from "./age-band";
import { type ArmRecord, type DayLoad, dayLoads } from "./day-load";
import type { Advice, AlreadyToday, DailyMax, LimitReason, OutingAhead } from "./limit-reason";
import { daysInARow, longestRestDays, outingAhead, restOwed } from "./limit-rules";
import type { PainStop } from "./pain";
import { ageByBook, bandForAge, type RuleBook } from "./rule-book";
import { currentEntries } from "./throw-entry";

/** `pitches`: the day's whole total that an admin let the arm reach, whatever the books say. */
export interface LimitOverride {
  id: string;
  day: CalendarDay;
  pitches: number;
}

/** What is asked about one arm on one day. */
export interface ArmQuestion extends ArmRecord {
  bornOn: CalendarDay;
  /** The athlete's own first, then those of the teams they pitch for. Each weighs all throws of the arm. */
  books: readonly [RuleBook, ...RuleBook[]];
  /** What admins let the arm reach on a day; of several for one day the last stands. */
  overrides: readonly LimitOverride[];
  day: CalendarDay;
  /** The day at the athlete's home site: silence is counted up to it, never into days that are still to come. */
  today: CalendarDay;
  pain: PainStop | null;
  /**
   * The last day anything was said of, be it that nothing was thrown; the day the athlete joined when nothing ever
   * was. A later entry in the log moves it on by itself.
   */
  lastReportedOn: CalendarDay;
}

/**
 * At most how many pitches the book leaves, never a permission.
 * - `at_most`: `pitches` more on this day, 0 when what is already on the day uses it up.
 * - `resting`: 0, because other days need this one free of pitching.
 * - `pain`: 0 and no first free day; only a clearance ends it.
 * - `no_published_limit`: `pitches` is null; the age on the day decides, and nothing else is looked at.
 */
export interface PitchesAllowed {
  status: "at_most" | "resting" | "pain" | "no_published_limit";
  day: CalendarDay;
  pitches: number | null;
  /** At most how many outs more, by innings rules; null where no book in force counts innings. */
  outs: number | null;
  /** The id of the book whose number this is, the strictest; null under pain and without a published limit. */
  boundBy: string | null;
  /** Its name when there are several books to tell apart, else null. */
  boundByName: string | null;
  /** The first later day with room for at least one pitch given all that is planned; null unless `pitches` is 0. */
  firstFreeDay: CalendarDay | null;
  /** The last day anything was said of when that is longer ago than the academy's span, else null: ask. */
  nothingReportedSince: CalendarDay | null;
  /** In order of what binds: on a resting day only what makes it one, otherwise all that goes into the number. */
  reasons: LimitReason[];
  /** What rules that only advise say of the day; they change no number. */
  warnings: Advice[];
}

type Weighed = Pick<PitchesAllowed, "status" | "pitches" | "outs" | "boundBy" | "reasons">;

/**
 * How many pitches the book leaves one arm on one day, looking both ways: rest owed by what was thrown before, and
 * rest that what is planned later will need. Counted in calendar days only, so clock changes and leap days do not
 * matter; the age on each day decides that day's row.
 * @example A 12-year-old who threw 51 on Wed 25 Nov rests until Sun 29 Nov; with an outing on Tue 1 Dec that Sunday
 * has room for at most 35.
 */
export function pitchesAllowed(question: ArmQuestion): PitchesAllowed {
  const weighed = weigh(question, dayLoads(question));
  return {
    ...weighed,
    day: question.day,
    boundByName: boundByName(question.books, weighed.boundBy),
    warnings: [],
    firstFreeDay: weighed.pitches === 0 ? firstDayWithRoom(question, 1) : null,
    nothingReportedSince: nothingReportedSince(question),
  };
}

/**
 * The first day from `question.day` on, that day included, with room for this many pitches more; null under a pain
 * stop, when the book has no limit for the age by then, or when even a rested arm with nothing planned has not.
 * @param pitches 1 or more
 */
export function firstDayWithRoom(question: ArmQuestion, pitches: number): CalendarDay | null {
  if (question.pain) return null;
  const loads = dayLoads(question);
  const lastLoadedDay = latest([question.day, ...loads.keys()]);
  // Past the last load by the longest rest and the longest row of days nothing can hold the arm any more.
  const reachDays = Math.max(...question.books.map(longestRestDays)) + 8;
  const lastDay = addDays(lastLoadedDay, reachDays);
  for (let day = question.day; day <= lastDay; day = addDays(day, 1)) {
    const room = weigh({ ...question, day }, loads).pitches;
    if (room === null) return null;
    if (room >= pitches) return day;
  }
  return null;
}

function weigh(question: ArmQuestion, loads: ReadonlyMap<CalendarDay, DayLoad>): Weighed {
  if (question.pain) return stopped(question.pain, ageOn(question.bornOn, question.day));
  const answers = question.books.map((book) => weighByBook(question, book, loads));
  const strictest = answers.reduce((found, each) =>
    (each.pitches ?? Number.POSITIVE_INFINITY) < (found.pitches ?? Number.POSITIVE_INFINITY) ? each : found,
  );
  return withOverride(strictest, question, loads.get(question.day)?.pitches ?? 0);
}

function weighByBook(
  { bornOn, day }: ArmQuestion,
  book: RuleBook,
  loads: ReadonlyMap<CalendarDay, DayLoad>,
): Weighed {
  const ageYears = ageByBook(book.ageBasis, bornOn, day);
  const band = bandForAge(book, ageYears, day);
  if (!band) {
    const reasons: LimitReason[] = [{ kind: "no_published_limit", ageYears }];
    return { status: "no_published_limit", pitches: null, outs: null, boundBy: null, reasons };
  }
  const standing = { bornOn, book, loads, day, band };
  const resting = [...restOwed(standing), ...present(daysInARow(standing))];
  const said = { outs: null, boundBy: book.id };
  if (resting.length > 0) return { status: "resting", pitches: 0, ...said, reasons: resting };
  return { status: "at_most", ...said, ...roomOnDay(band, ageYears, outingAhead(standing), loads.get(day)) };
}

function withOverride(weighed: Weighed, { overrides, day }: ArmQuestion, already: number): Weighed {
  const override = overrides.findLast((each) => each.day === day);
  const pitches = Math.max(0, (override?.pitches ?? 0) - already);
  if (!override || weighed.pitches === null || pitches <= weighed.pitches) return weighed;
  const reason: LimitReason = { kind: "override", overrideId: override.id, pitches: override.pitches };
  return { ...weighed, status: "at_most", pitches, reasons: [reason, ...weighed.reasons] };
}

function boundByName(books: readonly RuleBook[], id: string | null): string | null {
  return books.length > 1 ? (books.find((book) => book.id === id)?.name ?? null) : null;
}

function stopped(pain: PainStop, ageYears: number): Weighed {
  const clearedBy = ageYears >= OF_AGE_YEARS ? "athlete" : "guardian";
  const { kind: painKind, firstFeltOn: feltOn, reportIds } = pain;
  return {
    status: "pain",
    pitches: 0,
    outs: null,
    boundBy: null,
    reasons: [{ kind: "pain", painKind, feltOn, clearedBy, reportIds }],
  };
}

/** The day's own number less what is already on it; the tighter reason first, then what comes off it. */
function roomOnDay(band: AgeBand, ageYears: number, ahead: OutingAhead | null, today: DayLoad | undefined) {
  const total = ahead?.totalPitches ?? band.dailyMaxPitches;
  const already = present(today ? alreadyToday(today) : null);
  const dailyMax: DailyMax = { kind: "daily_max", ageYears, dailyMaxPitches: band.dailyMaxPitches };
  const reasons: LimitReason[] = ahead ? [ahead, ...already, dailyMax] : [dailyMax, ...already];
  return { pitches: Math.max(0, total - (today?.pitches ?? 0)), reasons };
}

function alreadyToday({ pitches, entryIds, plannedIds }: DayLoad): AlreadyToday {
  return { kind: "already_today", pitches, entryIds, plannedIds };
}

function nothingReportedSince(question: ArmQuestion): CalendarDay | null {
  const spokenOf = currentEntries(question.entries).map((entry) => entry.thrownOn);
  const last = latest([question.lastReportedOn, ...spokenOf]);
  const silentDays = Math.min(daysBetween(last, question.day), daysBetween(last, question.today));
  return silentDays > question.reading.askAfterDays ? last : null;
}

function latest(days: readonly [CalendarDay, ...CalendarDay[]]): CalendarDay {
  return days.reduce((last, day) => {
    if (day > last) return day;
    return last;
  });
}

function present<Value>(value: Value | null): Value[] {
  return value === null ? [] : [value];
}
