import { correctionsOf } from "@/server/data/corrections";
import { stayOf } from "@/server/data/leaving";
import { nameOfAthlete } from "@/server/data/names";
import { sentReviewsOf } from "@/server/data/reviews";
import { playableClips } from "@/server/data/round-clips";
import { drawingProgress } from "@/server/data/today";
import { voicesToHear } from "@/server/data/voice-notes";
import { hasLeft } from "@/server/domain/people/leaving";
import { replyOffer } from "@/server/domain/reviews/reply-offer";
import type { Scope } from "../context";
import { roundInHand } from "../round-in-hand";
import {
  coachNameOf,
  correctionsOfRound,
  correctionView,
  measuredOn,
  roundView,
  sentView,
} from "./round-parts";
import type { ReadingView } from "./shapes";

/** A round that was open on the day the athlete left asks for no clip any more. */
const NOTHING_WANTED = { isWanted: false, isOpen: false, words: "" } as const;

/** Everything the family reads of a round. What is still being written is not in it. */
export async function loadReading(scope: Scope, roundId: string): Promise<ReadingView> {
  const { db, athlete, today } = scope;
  const round = await roundInHand(db, roundId);
  const corrections = correctionsOfRound(await correctionsOf(db, athlete.athleteId), round);
  const clips = await playableClips(
    db,
    round.id,
    corrections.flatMap((each) => (each.clipId === null ? [] : [each.clipId])),
  );
  const { givenName } = await nameOfAthlete(db, athlete.athleteId);
  const sent = (await sentReviewsOf(db, round.id)).map(sentView);
  const voices = [...corrections, ...sent.flatMap(({ keeps }) => keeps)].map(({ voiceId }) => voiceId);
  const stay = await stayOf(db, athlete.athleteId);
  return {
    round: await roundView(db, round),
    zone: athlete.zone,
    today,
    athlete: { athleteId: athlete.athleteId, givenName },
    coachName: await coachNameOf(db, round),
    clips,
    drawing: await drawingProgress(db),
    corrections: corrections.map((each) => correctionView(each, scope)),
    ...(await measuredOn(db, clips)),
    sent,
    voicesToHear: await voicesToHear(
      db,
      voices.flatMap((id) => (id === null ? [] : [id])),
    ),
    reply: hasLeft(stay?.leftOn ?? null, today) ? NOTHING_WANTED : replyOffer({ ...round, today }),
  };
}
