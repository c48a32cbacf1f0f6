import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords, momentInWords } from "@/server/domain/time/words";
import type { RoundState } from "./round-state";

/** The states as they are written on a screen. */
export const ROUND_STATE_WORDS: Record<RoundState, string> = {
  received: "waiting for a coach",
  taken: "with a coach",
  sent: "review sent",
  answered: "reply in, waiting for the check",
  settled: "settled",
  retake: "waiting for a new clip",
  withdrawn: "withdrawn",
  lapsed: "lapsed without a reply",
};

/** What a sentence about a round needs. `lapsesOn` is the first day it has lapsed. */
export interface ToldRound {
  state: RoundState;
  dueAtMs: number | null;
  replyFrom: CalendarDay | null;
  lapsesOn: CalendarDay | null;
}

/**
 * Where a round stands and whose turn it is, for a family.
 * @param today the day at the athlete's home site, `zone` its zone
 * @example "A new clip is asked for from Sun 29 Nov on, until Wed 16 Dec."
 */
export function roundInWords(round: ToldRound, today: CalendarDay, zone: string): string {
  const due = round.dueAtMs === null ? "" : `, due by ${momentInWords(round.dueAtMs, zone)}`;
  switch (round.state) {
    case "received":
      return `The clip is in. A review is owed${due}.`;
    case "taken":
      return `A coach has the clip. The review is owed${due}.`;
    case "answered":
      return `The reply is in. The check is owed${due}.`;
    case "sent":
      return askedFor("A new clip is asked for", round, today);
    case "retake":
      return askedFor("The clip could not be used: another one is asked for", round, today);
    case "settled":
    case "withdrawn":
    case "lapsed":
      return `The last round is ${ROUND_STATE_WORDS[round.state]}.`;
  }
}

function askedFor(what: string, { replyFrom, lapsesOn }: ToldRound, today: CalendarDay): string {
  if (replyFrom === null) return `${what} once the arm may throw again.`;
  const from = replyFrom > today ? ` from ${dayInWords(replyFrom)} on` : "";
  const until = lapsesOn === null ? "" : `${from ? "," : ""} until ${dayInWords(addDays(lapsesOn, -1))}`;
  return `${what}${from}${until}.`;
}
