import { and, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { notice } from "@/db/schema/notices";
import { sessionNotice } from "@/server/domain/calendar/session-in-words";
import { plannedWithoutRoom } from "@/server/domain/throwing/flag-planned";
import { limitInWords, whyInSentences } from "@/server/domain/throwing/why";
import { armOf } from "./arms";
import { familyRecipients, type NoticeText, postNotice } from "./notices";
import { findSession } from "./sessions";

/**
 * Tells the family and the coach, once each, of every booked session that the book no longer has room for. To be called
 * in the unit of work that logged throws or pain; a session moved since is told of anew. What a screen shows is worked
 * out whenever it is shown, and does not rest on this.
 * @returns how many booked sessions stand without room
 */
export async function tellOfSessionsWithoutRoom(tx: Db, athleteId: string, nowMs: number): Promise<number> {
  const arm = await armOf(tx, athleteId, nowMs);
  const family = await familyRecipients(tx, athleteId, nowMs);
  let flagged = 0;
  for (const { planned, answer } of plannedWithoutRoom(arm)) {
    const card = await findSession(tx, arm.sessionOfPlanned.get(planned.id) ?? "");
    const own = card?.athletes.find((each) => each.athleteId === athleteId);
    if (!card || !own) continue;
    flagged += 1;
    const text = sessionNotice("session_without_room", own.givenName, card, [
      `It asks for ${planned.pitches} pitches; ${limitInWords(answer)} now. ${whyInSentences(answer).join(" ")}`,
      "Move it, plan fewer pitches, or make it a session without mound throws.",
    ]);
    for (const personId of new Set([...family, card.coachPersonId])) {
      await tellOnce(tx, personId, athleteId, text, nowMs);
    }
  }
  return flagged;
}

async function tellOnce(
  tx: Db,
  personId: string,
  athleteId: string,
  text: NoticeText,
  nowMs: number,
): Promise<void> {
  const [before] = await tx
    .select({ id: notice.id })
    .from(notice)
    .where(
      and(
        eq(notice.kind, text.kind),
        eq(notice.toPersonId, personId),
        eq(notice.aboutAthleteId, athleteId),
        eq(notice.subject, text.subject),
      ),
    );
  if (!before) await postNotice(tx, personId, text, nowMs, athleteId);
}
