import type { Connections } from "@/db/client";
import { dueNotices, type OutgoingNotice, settleNotice } from "@/server/data/notices";
import { unitOfWork } from "@/server/data/unit-of-work";
import { bodyOnceSent, MAX_TRIES, type NoticeState, retryAfterMs } from "@/server/domain/notices/notice";
import type { Mail } from "@/server/notices/mailer";

/** How notices leave: by mail, or (without a mail server) not at all. */
export interface Outlet {
  isSet: boolean;
  send: (mail: Mail) => Promise<void>;
}

const AT_ONCE = 20;

/**
 * Sends what waits, oldest first. Without a mail server, or without an address, a notice is kept for an admin to read;
 * one that fails is tried again after 1, 2, 4 ... minutes and stays failed in the end.
 */
export async function sendNotices(on: Connections, nowMs: number, outlet: Outlet): Promise<void> {
  for (const notice of await dueNotices(on.reader, nowMs, AT_ONCE)) {
    const failure = await tryToSend(notice, outlet);
    const outcome = outcomeOf(notice, failure, outlet.isSet, nowMs);
    await unitOfWork(on, (tx) => settleNotice(tx, notice.id, outcome));
  }
}

async function tryToSend(notice: OutgoingNotice, outlet: Outlet): Promise<string | null> {
  if (!outlet.isSet || !notice.email) return null;
  try {
    await outlet.send({ to: notice.email, subject: notice.subject, text: notice.body });
    return null;
  } catch (error) {
    return error instanceof Error ? error.message.slice(0, 300) : "The mail server did not take it.";
  }
}

function outcomeOf(notice: OutgoingNotice, failure: string | null, isSet: boolean, nowMs: number) {
  const attempts = notice.attempts + 1;
  const state = stateAfter(notice, failure, isSet, attempts);
  return {
    state,
    attempts,
    nextTryAtMs: state === "waiting" ? nowMs + retryAfterMs(attempts) : nowMs,
    lastError: failure,
    sentAtMs: state === "sent" ? nowMs : null,
    ...(state === "sent" ? { body: bodyOnceSent(notice.body) } : {}),
  };
}

function stateAfter(
  notice: OutgoingNotice,
  failure: string | null,
  isSet: boolean,
  attempts: number,
): NoticeState {
  if (!isSet || !notice.email) return "kept";
  if (failure === null) return "sent";
  return attempts >= MAX_TRIES ? "failed" : "waiting";
}
