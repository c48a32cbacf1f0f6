import { OF_AGE_YEARS } from "@/server/domain/people/person";
import { ageOn, type CalendarDay } from "@/server/domain/time/calendar-day";
import { type DayNumber, dayNumber } from "@/server/domain/time/day-number";
import { ageFinder } from "./age-finder";
import type { ArmQuestion, PitchesAllowed } from "./arm-question";
import { type ArmView, armView } from "./arm-view";
import { type BookAnswer, bookAnswer } from "./book-answer";
import { type DatedBook, datedBook } from "./dated-book";
import type { LimitReason } from "./limit-reason";
import type { PainStop } from "./pain";
import { reasonsOf } from "./reasons-of";
import type { Asked } from "./rule-hold";

/** One arm, laid out once to be asked about any number of days. */
export interface Arm {
  question: Omit<ArmQuestion, "day">;
  view: ArmView;
  books: readonly { dated: DatedBook; ageAt: Asked["ageAt"] }[];
  overrideOn: ReadonlyMap<DayNumber, ArmQuestion["overrides"][number]>;
}

/** The numbers of one day; `pitches` and `outs` are Infinity where nothing holds them. */
export interface WeighedDay {
  status: PitchesAllowed["status"];
  pitches: number;
  outs: number;
  /** By book, the strictest first; empty under pain. */
  answers: readonly BookAnswer[];
  override: ArmQuestion["overrides"][number] | null;
}

/** Lays an arm out. */
export function layOut(question: Omit<ArmQuestion, "day">): Arm {
  return {
    question,
    view: armView(question),
    books: question.books.map((book) => ({
      dated: datedBook(book),
      ageAt: ageFinder(book.ageBasis, question.bornOn),
    })),
    overrideOn: new Map(question.overrides.map((override) => [dayNumber(override.day), override])),
  };
}

/** What all books together leave on a day: the strictest number, unless pain or an override stands. */
export function weighDay(arm: Arm, day: DayNumber): WeighedDay {
  if (arm.question.pain) return { status: "pain", pitches: 0, outs: 0, answers: [], override: null };
  const answers = arm.books.map(({ dated, ageAt }) => bookAnswer(dated, { view: arm.view, ageAt, day }));
  if (answers.length > 1) answers.sort(byStrictness);
  const [strictest] = answers;
  if (!strictest) throw new Error("An arm goes by one book at least.");
  let { pitches, outs } = strictest;
  for (const answer of answers) outs = Math.min(outs, answer.outs);
  if (outs === 0) pitches = 0;
  if (pitches === 0 && outs !== Number.POSITIVE_INFINITY) outs = 0;
  const held: WeighedDay = { status: strictest.status, pitches, outs, answers, override: null };
  const override = arm.overrideOn.get(day);
  return override ? lifted(held, override, arm.view.loads.get(day)?.pitches ?? 0) : held;
}

/** An override is the day's whole total: what is on the day comes off it. It never lowers a number. */
function lifted(
  held: WeighedDay,
  override: NonNullable<WeighedDay["override"]>,
  already: number,
): WeighedDay {
  const pitches = Math.max(0, override.pitches - already);
  if (pitches <= held.pitches) return held;
  return { ...held, status: "at_most", pitches, outs: Number.POSITIVE_INFINITY, override };
}

/* Silent books last; the fewest pitches first, then the fewest outs, then rest, and of rests the longest. */
function byStrictness(a: BookAnswer, b: BookAnswer): number {
  const silent = Number(a.status === "no_published_limit") - Number(b.status === "no_published_limit");
  if (silent !== 0) return silent;
  return (
    compare(a.pitches, b.pitches) ||
    Number(b.status === "resting") - Number(a.status === "resting") ||
    b.restsUntil - a.restsUntil ||
    compare(a.outs, b.outs)
  );
}

const compare = (a: number, b: number) => Number(a > b) - Number(a < b);

/** The answer of a day without what takes other days to know. */
export function answerOf(
  arm: Arm,
  weighed: WeighedDay,
  day: CalendarDay,
): Pick<PitchesAllowed, "status" | "pitches" | "outs" | "boundBy" | "boundByName" | "reasons"> {
  const { question } = arm;
  if (question.pain) return stopped(question.pain, ageOn(question.bornOn, day));
  const { status, answers, override } = weighed;
  const [strictest] = answers;
  const isSilent = status === "no_published_limit" || !strictest;
  const bound = isSilent ? null : strictest.dated.book;
  return {
    status,
    pitches: finite(weighed.pitches),
    outs: finite(weighed.outs),
    boundBy: bound?.id ?? null,
    boundByName: question.books.length > 1 ? (bound?.name ?? null) : null,
    reasons: isSilent ? [silence(arm, day)] : [...overridden(override), ...reasonsOf(answers)],
  };
}

function silence(arm: Arm, day: CalendarDay): LimitReason {
  const ageYears = arm.books[0]?.ageAt(dayNumber(day)) ?? ageOn(arm.question.bornOn, day);
  return { kind: "no_published_limit", ageYears };
}

function overridden(override: WeighedDay["override"]): LimitReason[] {
  if (!override) return [];
  return [{ kind: "override", overrideId: override.id, pitches: override.pitches }];
}

function stopped(pain: PainStop, ageYears: number) {
  const clearedBy = ageYears >= OF_AGE_YEARS ? ("athlete" as const) : ("guardian" as const);
  const { kind: painKind, firstFeltOn: feltOn, reportIds } = pain;
  const reasons: LimitReason[] = [{ kind: "pain", painKind, feltOn, clearedBy, reportIds }];
  return { status: "pain" as const, pitches: 0, outs: null, boundBy: null, boundByName: null, reasons };
}

function finite(number: number): number | null {
  return number === Number.POSITIVE_INFINITY ? null : number;
}
