import type { MarkedFrames } from "./event-strip";
import type { ClipPlayer } from "./use-clip-player";

/** What the controls of a clip take. */
export interface PlayedWith {
  player: ClipPlayer;
  /** The marked moments, for what is played over and over; none without them. */
  marks?: MarkedFrames | undefined;
}
