import { z } from "zod";
import { correctionsOf } from "@/server/data/corrections";
import { findDraft } from "@/server/data/drafts";
import { eventMarksOn } from "@/server/data/reviews";
import { earlierClips, type PlayableClip, playableClips } from "@/server/data/round-clips";
import { drawingProgress } from "@/server/data/today";
import { CLIP_PARTS } from "@/server/domain/clips/clip";
import { CAMERA_VIEWS } from "@/server/domain/mechanics/delivery";
import { isOpen } from "@/server/domain/reviews/correction-state";
import { type EventMark, eventMarkSchema } from "@/server/domain/reviews/draft";
import { athleteHead, headOf } from "../athlete-head";
import type { Scope } from "../context";
import { roundInHand } from "../round-in-hand";
import { correctionView } from "./round-parts";
import { clipShape, correctionShape } from "./shapes";

/** A clip of a round and an earlier one of its view, with their moments and what is open. */
export const compareShape = z.strictObject({
  roundId: z.string(),
  zone: z.string(),
  athlete: athleteHead,
  drawing: z.strictObject({ ready: z.int(), drawing: z.int() }),
  /** The clips of the round, of which one is compared. */
  own: z.array(clipShape),
  /** The one that is compared; null when the round has no clip. */
  newer: clipShape.nullable(),
  /** The one it is compared with; null when there is no earlier clip of its view. */
  older: clipShape.nullable(),
  /** Every earlier clip of that view, the latest first. */
  earlier: z.array(
    z.strictObject({
      id: z.string(),
      roundId: z.string(),
      part: z.enum(CLIP_PARTS),
      view: z.enum(CAMERA_VIEWS).nullable(),
      filmedOn: z.string().nullable(),
    }),
  ),
  eventMarks: z.array(eventMarkSchema),
  corrections: z.array(correctionShape),
});
/** A clip of a round and an earlier one of its view. */
export type CompareView = z.output<typeof compareShape>;

/**
 * A clip of a round (the last that came, unless one is named) beside an earlier one of the same view (the latest before
 * it, unless one is named). A name that fits nothing is passed over.
 */
export async function loadCompare(
  scope: Scope,
  asked: { roundId: string; clipId: string | null; withClipId: string | null },
): Promise<CompareView> {
  const { db, athlete } = scope;
  const round = await roundInHand(db, asked.roundId);
  const own = await playableClips(db, round.id);
  const newer = own.find((clip) => clip.id === asked.clipId) ?? own.at(-1) ?? null;
  const earlier = newer === null ? [] : await earlierClips(db, newer.id);
  const wanted = earlier.find((clip) => clip.id === asked.withClipId) ?? earlier[0];
  const older = wanted === undefined ? null : await clipById(db, wanted);
  const corrections = await correctionsOf(db, athlete.athleteId);
  return {
    roundId: round.id,
    zone: athlete.zone,
    athlete: await headOf(scope),
    drawing: await drawingProgress(db),
    ...{ own, newer, older, earlier },
    eventMarks: await marksOnBoth(scope, round.id, [newer, older]),
    corrections: corrections
      .filter(({ standing }) => isOpen(standing.state))
      .map((each) => correctionView(each, scope)),
  };
}

async function clipById(db: Scope["db"], { id, roundId }: { id: string; roundId: string }) {
  const clips = await playableClips(db, roundId);
  return clips.find((clip) => clip.id === id) ?? null;
}

/** The moments as sent, and over them those that the coach of this round is still writing. */
async function marksOnBoth(
  { db }: Scope,
  roundId: string,
  clips: readonly (PlayableClip | null)[],
): Promise<EventMark[]> {
  const ids = clips.flatMap((clip) => (clip === null ? [] : [clip.id]));
  const drafts = [await findDraft(db, roundId, "review"), await findDraft(db, roundId, "check")];
  const written = drafts.flatMap((draft) => draft?.document.eventMarks ?? []);
  const all = [...(await eventMarksOn(db, ids)), ...written.filter((mark) => ids.includes(mark.clipId))];
  return [...new Map(all.map((mark) => [`${mark.clipId} ${mark.event}`, mark])).values()];
}
