import type { PlayableClip } from "@/server/data/round-clips";
import { Refusal } from "@/server/domain/errors/refusal";
import { type FirstMeasure, repeatedOn } from "@/server/domain/mechanics/measure-again";
import type { ThrowingHand } from "@/server/domain/people/person";
import type { Place } from "@/server/domain/reviews/draft";
import {
  type MeasureToSend,
  measuresMissing,
  measuresToSend,
} from "@/server/domain/reviews/measures-to-send";

/** Points in the order asked for, and where a held finish ends. */
export interface PlacedPoints {
  points: readonly Place[];
  untilFrame: number | null;
}

/**
 * What points placed blind on the frames of an earlier measure are worth.
 * @throws Refusal `measure_invalid` when they give no value
 */
export function valueOfPoints(
  first: FirstMeasure,
  placed: PlacedPoints,
  { clip, throws }: { clip: PlayableClip; throws: ThrowingHand },
): MeasureToSend {
  const taken = repeatedOn(first, placed);
  const facts = { throws, clips: [clip] };
  const [why] =
    taken === null ? ["Place every point."] : measuresMissing({ measures: [taken], marks: [] }, facts);
  if (taken === null || why !== undefined) throw new Refusal({ reason: "measure_invalid", why: why ?? "" });
  const [measure] = measuresToSend({ measures: [taken] }, facts);
  if (!measure) throw new Error("A second measure without a value.");
  return measure;
}
