import type { BlindFrame } from "./blind-draw";
import type { Checkpoint } from "./checkpoint";
import type { CameraView, DeliveryEvent } from "./delivery";
import { grouped } from "./grouped";
import { canBeMeasuredFrom, type MeasureKind } from "./measure-kind";

/** What coaches do with the frames of a set: judge them from 0 to 3, or place the points of a measure. */
export const BLIND_WAYS = ["judge", "measure"] as const;
export type BlindWay = (typeof BLIND_WAYS)[number];

type Seen = Pick<BlindFrame, "athleteId" | "coachId" | "clipId" | "frame" | "view">;

/** Frames that sent reviews have marked, one a clip and moment, and measured, one a clip, checkpoint and kind. */
export interface SeenFrames {
  marked: readonly (Seen & { event: DeliveryEvent })[];
  measured: readonly (Seen & { kind: MeasureKind; checkpointId: string })[];
}

type Asked = Pick<Checkpoint, "id" | "event" | "views" | "measure">;

/**
 * The frames that a checkpoint can be looked at on alone: to judge it, those on which its moment is marked; to measure
 * it, those on which its measure was taken, so that a frame on which the points could be placed is known.
 */
export function blindPool(
  way: BlindWay,
  { id, event, views, measure }: Asked,
  { marked, measured }: SeenFrames,
): BlindFrame[] {
  if (way === "judge") {
    return marked
      .filter((each) => each.event === event && views.includes(each.view))
      .map(({ event: _event, ...each }) => ({ ...each, checkpointId: id, kind: "judgement" }));
  }
  return measured.filter(
    (each) => each.checkpointId === id && each.kind === measure && canBeMeasuredFrom(each.kind, each.view),
  );
}

/** How many frames there are to draw from, of one checkpoint from one view. */
export interface PoolCount {
  way: BlindWay;
  checkpointId: string;
  view: CameraView;
  frames: number;
}

/** How many frames there are of each checkpoint and view, both ways; those without any are left out. */
export function poolCounts(checkpoints: readonly Asked[], seen: SeenFrames): PoolCount[] {
  return BLIND_WAYS.flatMap((way) =>
    checkpoints.flatMap((checkpoint) =>
      grouped(blindPool(way, checkpoint, seen), ({ view }) => view).flatMap((group): PoolCount[] => {
        const [first] = group;
        return first ? [{ way, checkpointId: checkpoint.id, view: first.view, frames: group.length }] : [];
      }),
    ),
  );
}
