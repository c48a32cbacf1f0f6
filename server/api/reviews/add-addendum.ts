import { nameOfAthlete } from "@/server/data/names";
import { tellFamily } from "@/server/data/notices";
import { findReview, insertAddendum } from "@/server/data/reviews";
import { Refusal } from "@/server/domain/errors/refusal";
import { env } from "@/server/env";
import type { Scope } from "../context";
import { roundInHand } from "../round-in-hand";
import { coachNameOf } from "./round-parts";

/**
 * Adds a later word to a sent review, which itself is never changed, and tells the family.
 * @throws Refusal `round_taken_by` when another coach has the round
 */
export async function addAddendum(scope: Scope, input: { reviewId: string; text: string }): Promise<void> {
  const { db, actor, athlete, nowMs } = scope;
  const { reviewId, text } = input;
  const review = await findReview(db, reviewId);
  const round = await roundInHand(db, review?.roundId ?? "");
  if (round.coachPersonId !== actor.personId) {
    throw new Refusal({ reason: "round_taken_by", coachName: (await coachNameOf(db, round)) ?? "Nobody" });
  }
  await insertAddendum(db, { reviewId, coachPersonId: actor.personId, text, atMs: nowMs });
  const { givenName } = await nameOfAthlete(db, athlete.athleteId);
  const link = `${env.publicUrl}/family/${athlete.athleteId}/rounds/${round.id}`;
  const subject = `A further word on the review for ${givenName}`;
  const body = `${text}\n\n${link}`;
  await tellFamily(db, athlete.athleteId, { kind: "addendum_sent", subject, body }, nowMs);
}
