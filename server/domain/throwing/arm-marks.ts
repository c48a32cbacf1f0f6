import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { dayLoads } from "./day-load";
import type { OutingAhead } from "./limit-reason";
import { type ArmQuestion, type PitchesAllowed, pitchesAllowed } from "./pitches-allowed";
import { limitInWords } from "./why";

/** The states of an arm that have a shape of their own. */
export const ARM_MARK_KINDS = ["allowed", "thrown", "resting", "outing", "pain", "unreported"] as const;

/** One of {@link ARM_MARK_KINDS}. */
export type ArmMarkKind = (typeof ARM_MARK_KINDS)[number];

/** One state of an arm, for a shape and its words. */
export interface ArmMark {
  kind: ArmMarkKind;
  /** The number the shape bears; null where it bears none. */
  count: number | null;
  /** The first day after the rest, for a resting arm that has one. */
  freeOn: CalendarDay | null;
  words: string;
}

/**
 * How an arm stands on a day, what decides first: what the book leaves (or that it rests, or hurts), then what was thrown
 * already, what it is kept for, and that nothing was reported.
 * @param thrown counted pitches already thrown on that day, 0 or more
 * @example an arm resting until Sun 29 Nov: [{ kind: "resting", words: "resting until Sun 29 Nov" }]
 */
export function armMarks(answer: PitchesAllowed, thrown: number): ArmMark[] {
  const marks = [limitMark(answer)];
  if (thrown > 0) marks.push(mark("thrown", `${thrown} thrown`, thrown));
  const ahead = answer.reasons.find((reason): reason is OutingAhead => reason.kind === "outing_ahead");
  if (ahead) marks.push(mark("outing", `outing ${dayInWords(ahead.outingOn)}`));
  if (answer.nothingReportedSince) {
    const since = dayInWords(answer.nothingReportedSince).split(" ").slice(1).join(" ");
    marks.push(mark("unreported", `nothing reported since ${since}: ask`));
  }
  return marks;
}

/** The book's answer for an arm on a day, and its marks with what was thrown on that day. */
export function armOnDay(question: ArmQuestion): { answer: PitchesAllowed; marks: ArmMark[] } {
  const answer = pitchesAllowed(question);
  const thrown = dayLoads({ ...question, planned: [] }).get(question.day)?.pitches ?? 0;
  return { answer, marks: armMarks(answer, thrown) };
}

function limitMark(answer: PitchesAllowed): ArmMark {
  if (answer.status === "pain") return mark("pain", limitInWords(answer));
  /* The circle bears the books' own number and no other. */
  const isOverridden = answer.reasons.some((reason) => reason.kind === "override");
  if (isOverridden) return mark("allowed", limitInWords(answer));
  if (answer.status !== "resting") return mark("allowed", limitInWords(answer), answer.pitches);
  const freeOn = answer.firstFreeDay;
  const words = freeOn
    ? `resting until ${restEndInWords(answer.day, freeOn)}`
    : "resting, with no free day in sight";
  return { kind: "resting", count: null, freeOn, words };
}

/** "tomorrow", or the first free day in words. */
function restEndInWords(day: CalendarDay, freeOn: CalendarDay): string {
  return freeOn === addDays(day, 1) ? "tomorrow" : dayInWords(freeOn);
}

function mark(kind: ArmMarkKind, words: string, count: number | null = null): ArmMark {
  return { kind, count, freeOn: null, words };
}
