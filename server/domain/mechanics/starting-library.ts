import { type Checkpoint, inDeliveryOrder } from "./checkpoint";
import { startingFinish } from "./starting-finish";
import { startingStride } from "./starting-stride";
import { startingThrow } from "./starting-throw";
import { startingWindUp } from "./starting-wind-up";

/**
 * The checkpoints a new academy starts with, in the delivery's order; each academy edits its own copy. Cues, drills and
 * the words for 0 and 3 are common practice throughout; `source` names who measured or validated what is looked at.
 * Sides are named front, back, glove and throwing, so the same text serves right- and left-handers.
 */
export const STARTING_LIBRARY: readonly Checkpoint[] = [
  ...startingWindUp,
  ...startingStride,
  ...startingThrow,
  ...startingFinish,
].sort(inDeliveryOrder);
