import type { Db } from "@/db/client";
import { type ReplyWindow, replyWindow } from "@/server/domain/reviews/reply-window";
import { armFreeOn } from "@/server/domain/throwing/arm-free-on";
import { findSettings } from "./academy-settings";
import { armOf } from "./arms";

/**
 * When a clip is asked for that a family is asked for now: from the arm's first free day, for the academy's span. All
 * null while pain stops the arm.
 */
export async function replyWindowFrom(db: Db, athleteId: string, nowMs: number): Promise<ReplyWindow> {
  const settings = await findSettings(db);
  if (!settings) throw new Error("There is no academy yet.");
  const arm = await armOf(db, athleteId, nowMs);
  return replyWindow({
    sentOn: arm.today,
    spanDays: settings.replySpanDays,
    armFreeOn: armFreeOn({ ...arm, day: arm.today }),
  });
}
