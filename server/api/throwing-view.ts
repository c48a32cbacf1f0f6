import { z } from "zod";
import { armOf } from "@/server/data/arms";
import { plannedOutings, throwLog } from "@/server/data/throwing-log";
import { readingInWords } from "@/server/domain/throwing/reading-in-words";
import { adviceForAge, ageByBook, type RuleBook, STANDINGS } from "@/server/domain/throwing/rule-book";
import { THROW_GROUPS, throwsByWeek } from "@/server/domain/throwing/throws-by-week";
import { addMonths, type CalendarDay } from "@/server/domain/time/calendar-day";
import { answerFor, armAnswer } from "./arm-answer";
import { athleteHead, headOf } from "./athlete-head";
import type { Scope } from "./context";
import { painAnswer, painFor } from "./pain-answer";
import { logAnswer, logRow } from "./throwing/log-answer";
import { teamsAnswer, teamsFor } from "./throwing/team-answer";
import { loadFor, throwingLoad } from "./throwing-load";

/** Throws of one week by group; `weekOf` is its Monday. */
export const weekOfThrows = z.strictObject({
  weekOf: z.string(),
  counts: z.record(z.enum(THROW_GROUPS), z.int()),
});

/** An outing that is coming. */
export const outingAnswer = z.strictObject({
  id: z.string(),
  plannedOn: z.string(),
  pitches: z.int(),
  teamId: z.string().nullable(),
  teamName: z.string().nullable(),
});

/** Whose arm it is, what the book leaves it today and why, and the year's throwing. */
export const throwingView = z.strictObject({
  athlete: athleteHead,
  today: z.string(),
  arm: armAnswer,
  /** The books the arm goes by, the athlete's own first. */
  books: z.array(
    z.strictObject({
      name: z.string(),
      source: z.string(),
      standing: z.enum(STANDINGS),
      sampleYear: z.int().nullable(),
      /** The age it counts the athlete at today. */
      ageYears: z.int(),
      notes: z.array(z.string()),
      advice: z.array(z.string()),
    }),
  ),
  pain: painAnswer,
  log: z.array(logRow),
  outings: z.array(outingAnswer),
  teams: teamsAnswer,
  weeks: z.array(weekOfThrows),
  /** Which mound work counts, in a sentence. */
  reading: z.string(),
  load: throwingLoad,
});

/** Before any throw: the whole log is read, since load looks back past what is listed. */
const FIRST_DAY = "0001-01-01";

/** Reads everything the throwing page of the athlete in hand shows this caller: a year back. */
export async function throwingViewFor(scope: Scope): Promise<z.output<typeof throwingView>> {
  const { db, athlete, nowMs, today } = scope;
  const sinceDay = addMonths(today, -12);
  const arm = await armOf(db, athlete.athleteId, nowMs);
  const rows = await throwLog(db, athlete.athleteId, FIRST_DAY);
  return {
    athlete: await headOf(scope),
    today,
    arm: answerFor({ ...arm, day: today }),
    books: arm.books.map((book) => bookShown(book, athlete.bornOn, today)),
    pain: await painFor(scope),
    log: logAnswer(scope, rows).filter((row) => row.thrownOn >= sinceDay),
    outings: await plannedOutings(db, athlete.athleteId, today),
    teams: await teamsFor(scope),
    weeks: throwsByWeek(rows, sinceDay, today),
    reading: readingInWords(arm.reading),
    load: await loadFor(scope, rows),
  };
}

function bookShown(book: RuleBook, bornOn: CalendarDay, today: CalendarDay) {
  const { name, source, standing, sampleYear, notes } = book;
  const ageYears = ageByBook(book.ageBasis, bornOn, today);
  const advice = adviceForAge(book, ageYears).map((line) => line.words);
  return { name, source, standing, sampleYear, ageYears, notes, advice };
}
