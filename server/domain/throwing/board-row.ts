import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { armStrip, type StripDay } from "./arm-strip";
import type { BoardCell } from "./board-cell";
import { type PainSpan, painOnDay } from "./pain-span";
import type { ArmQuestion } from "./pitches-allowed";
import { countsTowardLimit, currentEntries, type PlannedThrows } from "./throw-entry";

/** A board shows two weeks back and two ahead, today between them. */
const DAYS_EACH_WAY = 14;

/**
 * The days of a board on a day.
 * @example boardDaysAround("2026-11-25") // "2026-11-11" to "2026-12-09", 29 days
 */
export function boardDaysAround(today: CalendarDay): CalendarDay[] {
  return Array.from({ length: 2 * DAYS_EACH_WAY + 1 }, (_, index) => addDays(today, index - DAYS_EACH_WAY));
}

/** All that a row of the board rests on. `planned` is left out: outings and booked sessions are told apart. */
export interface BoardQuestion extends Omit<ArmQuestion, "day" | "pain" | "planned"> {
  outings: readonly PlannedThrows[];
  booked: readonly PlannedThrows[];
  pain: readonly PainSpan[];
}

/**
 * How an arm stands on each day of a board, as it is known now. What the book leaves is what `pitchesAllowed` answers
 * for that day; pain stops the days from the one it was felt up to the one it was cleared, not those before.
 * @param days the days of the board, one after another
 */
export function boardCells(question: BoardQuestion, days: readonly CalendarDay[]): BoardCell[] {
  const { outings, booked, pain } = question;
  const [from, to] = [days.at(0), days.at(-1)];
  if (!from || !to) return [];
  const asked = { ...question, planned: [...outings, ...booked], pain: null };
  const thrown = thrownByDay(question);
  const outingOn = pitchesByDay(outings);
  const bookedOn = pitchesByDay(booked);
  return armStrip(asked, { from, to }).map((answer, index) => {
    const day = days[index] ?? from;
    const isHurt = pain.length > 0 && painOnDay(pain, day) !== null;
    return {
      limit: isHurt ? "pain" : limitOf(answer),
      outs: isHurt || answer.pitches !== null ? 0 : (answer.outs ?? 0),
      thrown: thrown.get(day) ?? 0,
      outing: outingOn.get(day) ?? 0,
      booked: bookedOn.get(day) ?? 0,
    };
  });
}

/** A number of outs stands in a cell only where there is none of pitches, and no number that is not the books'. */
function limitOf({ status, pitches, outs, isOverridden }: StripDay): BoardCell["limit"] {
  if (isOverridden) return "overridden";
  if (status === "resting" || status === "pain") return status;
  return pitches ?? (outs === null ? "no_published_limit" : "outs");
}

function thrownByDay({ entries, reading }: BoardQuestion): Map<CalendarDay, number> {
  const sums = new Map<CalendarDay, number>();
  for (const { kind, thrownOn, pitches } of currentEntries(entries)) {
    if (countsTowardLimit(kind, reading)) sums.set(thrownOn, (sums.get(thrownOn) ?? 0) + pitches);
  }
  return sums;
}

function pitchesByDay(planned: readonly PlannedThrows[]): Map<CalendarDay, number> {
  const sums = new Map<CalendarDay, number>();
  for (const { plannedOn, pitches } of planned) sums.set(plannedOn, (sums.get(plannedOn) ?? 0) + pitches);
  return sums;
}
