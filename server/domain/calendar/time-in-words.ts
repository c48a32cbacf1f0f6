import type { PitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { limitInWords, whyInSentences } from "@/server/domain/throwing/why";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords, momentInWords } from "@/server/domain/time/words";
import type { SessionRoom } from "./arm-room";

/** What the sentence of a found time names. */
export interface NamedTime {
  startsAtMs: number;
  zone: string;
  /** Null where the academy has but one site. */
  siteName: string | null;
  laneName: string;
  coachName: string;
  room: SessionRoom;
  plannedPitches: number;
  /** Whose arm is the tightest, when several come; null for one. */
  athleteName: string | null;
}

/**
 * A found time as one sentence; its number is never a permission.
 * @example "Tue 1 Dec 17:00, Lane 2, with Cole Rivers: at most 40 by the book."
 */
export function timeInSentence(time: NamedTime): string {
  const where = [momentInWords(time.startsAtMs, time.zone), time.siteName, time.laneName]
    .filter((part) => part !== null)
    .join(", ");
  return `${where}, with ${time.coachName}: ${roomInWords(time)}.`;
}

function roomInWords({ room, plannedPitches, athleteName }: NamedTime): string {
  if (room.status === "no_throws") return "no mound throws";
  if (room.status === "no_published_limit") return "no published limit";
  const whose = athleteName === null ? "" : ` for ${athleteName}`;
  const fewer = room.holdsPlanned ? "" : `, fewer than the ${plannedPitches} planned`;
  return `at most ${room.atMost} by the book${whose}${fewer}`;
}

/** Days in a row on which an arm may not throw for the same reason. */
export interface RefusedSpan {
  fromDay: CalendarDay;
  toDay: CalendarDay;
  sentence: string;
  status: PitchesAllowed["status"];
  firstFreeDay: CalendarDay | null;
  dryWorkFits: boolean;
}

/**
 * The refused days told once for each reason, in order: days that are refused in the same words, one after the other,
 * are one span; dry work fits it when it fits one of its days.
 * @param refused days in order, each with the answer for the arm that stops it
 */
export function refusedSpans(
  refused: readonly { day: CalendarDay; dryWorkFits: boolean; answer: PitchesAllowed }[],
): RefusedSpan[] {
  const spans: (RefusedSpan & { why: string })[] = [];
  for (const { day, dryWorkFits, answer } of refused) {
    const why = whyOf(answer);
    const last = spans.at(-1);
    if (last?.why === why) {
      last.toDay = day;
      last.dryWorkFits ||= dryWorkFits;
      last.sentence = `${dayInWords(last.fromDay)} to ${dayInWords(day)}: ${why}`;
      continue;
    }
    const { status, firstFreeDay } = answer;
    const sentence = `${dayInWords(day)}: ${why}`;
    spans.push({ fromDay: day, toDay: day, sentence, status, firstFreeDay, dryWorkFits, why });
  }
  return spans.map(({ why: _, ...span }) => span);
}

function whyOf(answer: PitchesAllowed): string {
  const why = whyInSentences(answer).join(" ");
  return answer.status === "pain" ? why : `${limitInWords(answer)}. ${why}`;
}
