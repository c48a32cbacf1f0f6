import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import type { BoardCell } from "./board-cell";
import { dayLoads } from "./day-load";
import { type PainSpan, painOnDay } from "./pain-span";
import { type ArmQuestion, pitchesAllowed } from "./pitches-allowed";
import type { PlannedThrows } from "./throw-entry";

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
 * How an arm stands on each day of a board, as it is known now. What the book leaves is what {@link pitchesAllowed}
 * answers for that day; pain stops the days from the one it was felt up to the one it was cleared, not those before.
 */
export function boardCells(question: BoardQuestion, days: readonly CalendarDay[]): BoardCell[] {
  const { outings, booked, pain } = question;
  const asked = { ...question, planned: [...outings, ...booked], pain: null };
  const thrown = dayLoads({ ...asked, planned: [] });
  const outingOn = pitchesByDay(outings);
  const bookedOn = pitchesByDay(booked);
  return days.map((day) => ({
    limit: pain.length > 0 && painOnDay(pain, day) ? "pain" : limitOf(pitchesAllowed({ ...asked, day })),
    thrown: thrown.get(day)?.pitches ?? 0,
    outing: outingOn.get(day) ?? 0,
    booked: bookedOn.get(day) ?? 0,
  }));
}

function limitOf({ status, pitches }: ReturnType<typeof pitchesAllowed>): BoardCell["limit"] {
  if (status === "resting") return "resting";
  return pitches ?? "no_published_limit";
}

function pitchesByDay(planned: readonly PlannedThrows[]): Map<CalendarDay, number> {
  const byDay = new Map<CalendarDay, number>();
  for (const { plannedOn, pitches } of planned) {
    byDay.set(plannedOn, (byDay.get(plannedOn) ?? 0) + pitches);
  }
  return byDay;
}
