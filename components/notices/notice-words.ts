import type { NoticeState } from "@/server/domain/notices/notice";

/** Where a notice stands, in words. */
export const STATE_WORDS: Record<NoticeState, string> = {
  waiting: "waiting to be sent",
  sent: "sent",
  kept: "kept here",
  failed: "failed",
};
