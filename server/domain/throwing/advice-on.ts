import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayNumber } from "@/server/domain/time/day-number";
import { rangeForAge } from "./age-ranges";
import { holdsOfRule, tightest } from "./book-answer";
import type { Advice, LimitReason, MonthsOffShort } from "./limit-reason";
import { type FreeMonths, monthsOff } from "./load-months-off";
import { reasonsOf } from "./reasons-of";
import type { RuleOf } from "./rule";
import { type Asked, type DatedRule, holdsOn } from "./rule-hold";
import type { Arm, WeighedDay } from "./weigh-day";

/** How many months are counted before the book's months off can be said to fall short. */
const WHOLE_YEAR = 12;

/**
 * What the rules of all books that only advise have to say of a day: those that would leave less than the limits do, and
 * those that hold no number. One that looks further back than the log that is at hand says too little, never too much.
 */
export function adviceOn(arm: Arm, weighed: WeighedDay, day: CalendarDay): Advice[] {
  return arm.books.flatMap(({ dated, ageAt }) =>
    dated.advice.flatMap((rule) => {
      const asked = { view: arm.view, ageAt, day: dayNumber(day) };
      const reasons = isMonthsOff(rule)
        ? monthsOffShort(rule, asked, arm, day)
        : saidOf(rule, asked, weighed, dated.longestRestDays);
      return reasons.map((reason) => ({ bookId: dated.book.id, source: rule.rule.source, reason }));
    }),
  );
}

function saidOf(rule: DatedRule, asked: Asked, limits: WeighedDay, longestRestDays: number): LimitReason[] {
  const holds = holdsOfRule(rule, asked, longestRestDays);
  const said = tightest(holds);
  // Where no limit counts innings, a number of them that is left says nothing of the day.
  const isLess =
    said.pitches < limits.pitches || (limits.outs < Number.POSITIVE_INFINITY && said.outs < limits.outs);
  const isUsedUp = said.pitches === 0 || said.outs === 0;
  return reasonsOf([
    { ...said, holds: isUsedUp || isLess ? holds : holds.filter(({ on }) => on === "note") },
  ]);
}

function isMonthsOff(dated: DatedRule): dated is DatedRule<RuleOf<"months_off">> {
  return dated.rule.kind === "months_off";
}

function monthsOffShort(
  dated: DatedRule<RuleOf<"months_off">>,
  { ageAt, day }: Asked,
  { question }: Arm,
  onDay: CalendarDay,
): MonthsOffShort[] {
  const band = holdsOn(dated, day) ? rangeForAge(dated.rule.ageBands, ageAt(day)) : null;
  const counted = band && monthsOff(question.entries, onDay < question.today ? onDay : question.today);
  if (!band || !counted || counted.monthsOnRecord < WHOLE_YEAR) return [];
  const { of } = dated.rule;
  const { months } = of === "throwing" ? counted.withoutThrowing : counted.withoutCompetition;
  const had: FreeMonths = { months, longestRun: counted.withoutThrowing.longestRun };
  if (had.months >= band.months && had.longestRun >= band.runMonths) return [];
  return [{ kind: "months_off", of, months: band.months, runMonths: band.runMonths, had }];
}
