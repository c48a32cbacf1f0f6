import { z } from "zod";
import type { Db } from "@/db/client";
import { nameOf } from "@/server/data/names";
import { remarkText } from "@/server/data/remarks";
import { openCorrectionsAt } from "@/server/data/round-queue";
import { type Round, roundsAwaitingClip } from "@/server/data/rounds";
import { fullName } from "@/server/domain/people/person";
import { replyOffer } from "@/server/domain/reviews/reply-offer";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** A round that a clip can be sent into, and what is asked for. */
export const roundToAnswer = z.strictObject({
  roundId: z.string(),
  /** A reply to a review, or a new clip in place of one that could not be used. */
  kind: z.enum(["reply", "retake"]),
  coachName: z.string().nullable(),
  /** Why the clip could not be used; empty for a reply. */
  reason: z.string(),
  /** Whether the book leaves the arm free by now. */
  isOpen: z.boolean(),
  /** From when and until when, in words. */
  words: z.string(),
  /** What the new clip should show. */
  openCorrections: z.array(z.string()),
});
export type RoundToAnswer = z.output<typeof roundToAnswer>;

/** The rounds of an athlete that wait for a clip on a day, oldest first; lapsed ones left out. */
export async function roundsToAnswer(
  db: Db,
  athleteId: string,
  today: CalendarDay,
): Promise<RoundToAnswer[]> {
  const open = (await openCorrectionsAt(db, [athleteId])).get(athleteId) ?? [];
  const openCorrections = open.map(({ name }) => name);
  const rounds: RoundToAnswer[] = [];
  for (const row of await roundsAwaitingClip(db, athleteId)) {
    const offer = replyOffer({ ...row, today });
    if (offer.isWanted) rounds.push({ ...(await askedFor(db, row)), ...offerFacts(offer), openCorrections });
  }
  return rounds;
}

async function askedFor(db: Db, row: Round) {
  return {
    roundId: row.id,
    kind: row.state === "retake" ? ("retake" as const) : ("reply" as const),
    coachName: row.coachPersonId ? fullName(await nameOf(db, row.coachPersonId)) : null,
    reason: await remarkText(db, row.state === "retake" ? row.retakeRemarkId : null),
  };
}

const offerFacts = ({ isOpen, words }: { isOpen: boolean; words: string }) => ({ isOpen, words });
