import type { Db } from "@/db/client";
import { firstMeasureOn } from "@/server/data/blind-frames";
import { type BlindItemRow, findBlindItem, findBlindSet, keepRating } from "@/server/data/blind-sets";
import { consentIsLive } from "@/server/data/consents";
import { findMeasurement } from "@/server/data/measurements";
import { nameOfAthlete } from "@/server/data/names";
import { type PlayableClip, playableClips } from "@/server/data/round-clips";
import { athleteCard } from "@/server/data/season";
import { Refusal } from "@/server/domain/errors/refusal";
import type { Place } from "@/server/domain/reviews/draft";
import type { Scope } from "../context";
import { valueOfPoints } from "../measurements/value-of-points";
import type { RateInput } from "./shapes";

/**
 * Keeps what a coach says of one frame of an open set.
 * @throws Refusal `blind_set_closed`, `rated_before`, `measure_invalid`, `clip_not_kept`, `consent_missing`, or `not_found`
 * for an answer of the other kind
 */
export async function rateItem({ db, actor, nowMs }: Scope, { itemId, answer }: RateInput): Promise<void> {
  const item = await findBlindItem(db, itemId);
  const set = item ? await findBlindSet(db, item.setId) : null;
  if (!item || !set) throw new Refusal({ reason: "not_found" });
  if (set.closedAtMs !== null) throw new Refusal({ reason: "blind_set_closed" });
  const clip = await clipInSight(db, item);
  const { value, points } = await saidOf(db, item, clip, answer);
  const rating = { itemId, coachPersonId: actor.personId, value, points, ratedAtMs: nowMs };
  if (!(await keepRating(db, rating))) throw new Refusal({ reason: "rated_before" });
}

async function clipInSight(db: Db, { clipId, athleteId }: BlindItemRow): Promise<PlayableClip> {
  const [clip] = await playableClips(db, "", [clipId]);
  if (!clip || clip.state === "expired") throw new Refusal({ reason: "clip_not_kept" });
  if (await consentIsLive(db, athleteId, "video")) return clip;
  const { givenName } = await nameOfAthlete(db, athleteId);
  throw new Refusal({ reason: "consent_missing", athleteGivenName: givenName });
}

async function saidOf(
  db: Db,
  item: BlindItemRow,
  clip: PlayableClip,
  answer: RateInput["answer"],
): Promise<{ value: number | null; points: readonly Place[] }> {
  if (answer.kind === "unseen") return { value: null, points: [] };
  if ((answer.kind === "judged") !== (item.kind === "judgement")) throw new Refusal({ reason: "not_found" });
  if (answer.kind === "judged") return { value: answer.score, points: [] };
  const first = await measureOfItem(db, item);
  if (!first) throw new Error(`Nothing was measured on the frame of ${item.id}.`);
  const { throws } = await athleteCard(db, item.athleteId);
  return valueOfPoints(first, answer, { clip, throws });
}

/** The measure that an item was drawn from; null for one that is judged. */
export async function measureOfItem(db: Db, { clipId, frame, kind }: BlindItemRow) {
  if (kind === "judgement") return null;
  const id = await firstMeasureOn(db, { clipId, frame, kind });
  return id === null ? null : findMeasurement(db, id);
}
