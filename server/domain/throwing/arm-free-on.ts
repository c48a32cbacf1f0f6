import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { type ArmQuestion, pitchesAllowed } from "./pitches-allowed";

/**
 * The first day from `question.day` on, that day included, on which the book leaves the arm a pitch at all: a reply or a
 * new clip is never asked for before it. An arm the book has no number for is free at once.
 * @returns null under a pain stop, and when the book shows no free day
 * @example threw 51 on Wed 25 Nov at 12 years, asked on the 26th: "2026-11-29"
 */
export function armFreeOn(question: ArmQuestion): CalendarDay | null {
  const { pitches, firstFreeDay } = pitchesAllowed(question);
  return pitches === 0 ? firstFreeDay : question.day;
}
