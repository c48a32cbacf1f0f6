import type { SeenFrames } from "@/server/domain/mechanics/blind-pool";
import { hasConsent } from "@/server/domain/people/consent";
import type { World } from "./world";

/** The frames of films still kept that reviews sent before an instant had marked and measured, one a clip and moment. */
export function seenOn(world: World, beforeMs: number): SeenFrames {
  const { rows } = world;
  const clipOf = new Map(rows.clip.filter(({ state }) => state === "drawing").map((clip) => [clip.id, clip]));
  const reviewOf = new Map(
    rows.review.filter(({ sentAtMs }) => sentAtMs < beforeMs).map((review) => [review.id, review]),
  );
  const consents = (athleteId: string) =>
    hasConsent(
      rows.consent.filter((row) => row.athleteId === athleteId),
      "video",
    );
  const marked = rows.eventMark.flatMap(({ reviewId, clipId, event, frame }) => {
    const [clip, review] = [clipOf.get(clipId), reviewOf.get(reviewId)];
    if (!clip?.view || !review || !consents(clip.athleteId)) return [];
    const { athleteId, view } = clip;
    return [{ athleteId, coachId: review.coachPersonId, clipId, event, frame, view }];
  });
  const measured = rows.measurement.flatMap((row) => {
    const { athleteId, coachPersonId, clipId, frame, view, kind, checkpointId } = row;
    if (!row.reviewId || !checkpointId || !reviewOf.has(row.reviewId)) return [];
    if (!clipOf.has(clipId) || !consents(athleteId)) return [];
    return [{ athleteId, coachId: coachPersonId, clipId, frame, view, kind, checkpointId }];
  });
  return {
    marked: firstOfEach(marked, ({ clipId, event }) => `${clipId} ${event}`),
    measured: firstOfEach(measured, ({ clipId, checkpointId, kind }) => `${clipId} ${checkpointId} ${kind}`),
  };
}

function firstOfEach<Row>(rows: readonly Row[], keyOf: (row: Row) => string): Row[] {
  return [...new Map([...rows].reverse().map((row) => [keyOf(row), row])).values()].reverse();
}
