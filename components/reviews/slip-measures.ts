import type { ClipView, RoomView } from "@/server/api/reviews/shapes";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import type { DraftMeasure } from "@/server/domain/reviews/draft";
import { measureOutcome } from "./picture-words";

/** What the measures on a slip are told from. */
export type SlipRoom = Pick<RoomView, "athlete" | "measureErrors"> & { clips: readonly ClipView[] };

/**
 * The measures of a draft that belong to a correction's or keep's checkpoint, each in the words the outline uses, as
 * the clips and their frames run; none for a row without a checkpoint.
 * @example [{ id: "m1", words: "Front-knee flexion 38° ± 3, frame 143" }]
 */
export function slipMeasures(
  checkpointId: string | null,
  measures: readonly DraftMeasure[],
  room: SlipRoom,
): { id: string; words: string }[] {
  if (checkpointId === null) return [];
  return room.clips.flatMap((clip) =>
    measures
      .filter((each) => each.checkpointId === checkpointId && each.clipId === clip.id)
      .sort((a, b) => a.frame - b.frame)
      .map((each) => ({
        id: each.id,
        words: `${MEASURES[each.kind].words} ${measureOutcome(each, { room, clip })}, frame ${each.frame + 1}`,
      })),
  );
}
