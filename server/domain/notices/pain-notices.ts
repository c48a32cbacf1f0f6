import type { PainKind } from "@/server/domain/throwing/pain";
import { PAIN_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { NoticeWords } from "./notice";

/** That pain was reported: what stops, who alone can clear it, and whose word comes first. */
export function painNotice(pain: {
  name: string;
  kind: PainKind;
  feltOn: CalendarDay;
  byName: string;
}): NoticeWords {
  const what = PAIN_KIND_WORDS[pain.kind];
  return {
    kind: "pain_reported",
    subject: `${what} reported for ${pain.name}: no throwing`,
    body: [
      `${what} was reported on ${dayInWords(pain.feltOn, { withYear: true })} by ${pain.byName}.`,
      `All throwing of ${pain.name} stops now: games, bullpens, lessons, everything. Booked sessions with throws need another plan.`,
      "The guardian clears it (an athlete of 18 for themselves), saying since when there have been no symptoms and who examined the arm. Nobody else can.",
      "The athlete's physician and athletic trainer come first. Nothing here is medical advice.",
    ].join("\n\n"),
  };
}

/** That an arm was cleared. Who examined it is left to the page. */
export function clearanceNotice(cleared: {
  name: string;
  symptomFreeSince: CalendarDay;
  byName: string;
}): NoticeWords {
  return {
    kind: "pain_cleared",
    subject: `${cleared.name} is cleared to throw again`,
    body: [
      `${cleared.byName} cleared ${cleared.name}: no symptoms since ${dayInWords(cleared.symptomFreeSince, { withYear: true })}.`,
      "The book's limits hold as before. Any new pain stops all throwing again.",
    ].join("\n\n"),
  };
}
