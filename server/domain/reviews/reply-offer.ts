import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { hasLapsed } from "./reply-window";
import type { RoundState } from "./round-state";

/** What decides whether a clip may be sent into a round today. */
export interface ReplyFacts {
  state: RoundState;
  replyFrom: CalendarDay | null;
  lapsesOn: CalendarDay | null;
  today: CalendarDay;
}

/** Whether a clip may be sent into the round now, and the sentence that stands beside the button. */
export interface ReplyOffer {
  /** A clip is wanted, be it now or later. */
  isWanted: boolean;
  isOpen: boolean;
  words: string;
}

/**
 * Whether the family may send a clip into this round, and when, in words. A clip is wanted after a review and after a
 * retake was asked for, from the arm's first free day to the last day before the round lapses.
 * @example sent, from 4 Nov, lapses 23 Nov, today 1 Nov: wanted, not open, "From Wed 4 Nov, the arm's first free day ..."
 */
export function replyOffer({ state, replyFrom, lapsesOn, today }: ReplyFacts): ReplyOffer {
  if (state !== "sent" && state !== "retake") return { isWanted: false, isOpen: false, words: "" };
  if (hasLapsed(lapsesOn, today)) {
    return {
      isWanted: false,
      isOpen: false,
      words: "The time for a reply has passed. A new clip begins a new round.",
    };
  }
  if (replyFrom === null) {
    const words = "No clip is asked for while pain is on record. It can be sent once the arm is cleared.";
    return { isWanted: true, isOpen: false, words };
  }
  const last = lapsesOn === null ? "" : `by ${dayInWords(addDays(lapsesOn, -1))}`;
  if (today < replyFrom) {
    const words = `From ${dayInWords(replyFrom)}, the arm's first free day by the book${last === "" ? "" : `, and ${last}`}.`;
    return { isWanted: true, isOpen: false, words };
  }
  return {
    isWanted: true,
    isOpen: true,
    words: last === "" ? "Any day from now." : `Please send it ${last}.`,
  };
}
