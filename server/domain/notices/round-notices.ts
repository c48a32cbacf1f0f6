import type { ReplyWindow } from "@/server/domain/reviews/reply-window";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { NoticeWords } from "./notice";

/**
 * That a clip has come in, to the family and to the coach.
 * @param arrival.due by when it is owed a look and at which site, e.g. "Fri 27 Nov 17:00 (North site)"
 */
export function arrivalNotices(arrival: { givenName: string; isReply: boolean; due: string }): {
  family: NoticeWords;
  coach: NoticeWords;
} {
  const { givenName, isReply, due } = arrival;
  const kind = isReply ? ("answer_received" as const) : ("clip_received" as const);
  const what = isReply ? "reply" : "clip";
  return {
    family: {
      kind,
      subject: `${givenName}'s ${what} is in`,
      body: `Thank you: the ${what} has arrived. It is looked at by ${due}. A word comes as soon as it is done.`,
    },
    coach: {
      kind,
      subject: `${givenName}: a ${what} is due by ${due}`,
      body: `A ${what} of ${givenName} came in. It is owed by ${due}. It stands in the queue under Reviews.`,
    },
  };
}

/** That a clip cannot be used, why, and from when and until when another one is asked for. */
export function retakeNotice(retake: {
  givenName: string;
  reason: string;
  window: Omit<ReplyWindow, "dueOn">;
}): NoticeWords {
  const body = [
    `The clip of ${retake.givenName} cannot be used: ${retake.reason}`,
    windowInWords(retake.window),
    "The time promised for the review stands still until the new clip comes.",
    "Film from behind a screen or from the side, phone on a tripod, nobody in the ball's path.",
  ].join("\n\n");
  return { kind: "retake_asked", subject: `A new clip of ${retake.givenName}, please`, body };
}

function windowInWords({ replyFrom, lapsesOn }: Omit<ReplyWindow, "dueOn">): string {
  if (replyFrom === null) return "Please film again once the arm has been cleared: no throwing before that.";
  const last = lapsesOn === null ? "" : `, by ${dayInWords(addDays(lapsesOn, -1))} at the latest`;
  return `Please film again from ${dayInWords(replyFrom)} on, the first day the book leaves the arm free${last}. An earlier clip of the same pitches is as good.`;
}

/** That a round was withdrawn, by whom and why. */
export function withdrawalNotice(withdrawal: {
  givenName: string;
  byName: string;
  reason: string;
}): NoticeWords {
  return {
    kind: "round_withdrawn",
    subject: `${withdrawal.givenName}'s round was withdrawn`,
    body: `${withdrawal.byName} withdrew it: ${withdrawal.reason}\n\nOpen corrections stay open. A new clip begins a new round.`,
  };
}

/** That the time for a clip has passed. @param lapse.lapsesOn the first day on which it was too late */
export function lapseNotice(lapse: { givenName: string; lapsesOn: CalendarDay }): NoticeWords {
  const last = dayInWords(addDays(lapse.lapsesOn, -1));
  return {
    kind: "round_lapsed",
    subject: `${lapse.givenName}'s round is closed`,
    body: `The last day for a new clip was ${last}, so this round is closed. What ${lapse.givenName} is working on stays open. A new clip begins a new round, and carries it on.`,
  };
}
