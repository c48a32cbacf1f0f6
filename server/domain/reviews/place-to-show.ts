import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import type { CameraView, DeliveryEvent } from "@/server/domain/mechanics/delivery";
import { isInSight } from "@/server/domain/mechanics/find-checkpoints";

/** A clip of the round with the frames, counted from 0, on which its moments are marked. */
export interface MarkedClip {
  id: string;
  view: CameraView | null;
  marks: Partial<Record<DeliveryEvent, number>>;
}

/** A frame of a clip. */
export interface ShownPlace {
  clipId: string;
  frame: number;
}

/**
 * The frame on which a checkpoint is best shown: on the clip in hand that of its moment, or where that is not marked the
 * frame in sight; where it cannot be seen on that clip, its moment on another clip of the round. Null when none shows it.
 */
export function placeToShow(
  checkpoint: Pick<Checkpoint, "views" | "event">,
  clips: readonly MarkedClip[],
  inSight: ShownPlace,
): ShownPlace | null {
  const seen = clips.filter((clip) => isInSight(checkpoint, clip.view));
  const inHand = seen.find((clip) => clip.id === inSight.clipId);
  if (inHand) return { clipId: inHand.id, frame: inHand.marks[checkpoint.event] ?? inSight.frame };
  const [other] = seen.flatMap(({ id, marks }) => {
    const frame = marks[checkpoint.event];
    return frame === undefined ? [] : [{ clipId: id, frame }];
  });
  return other ?? null;
}
