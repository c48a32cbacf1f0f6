import { seededDraws, shuffledBy } from "@/server/domain/statistics/seeded-draws";
import type { CameraView } from "./delivery";
import type { SeriesKind } from "./observation";

/** A frame that a blind set can be drawn from: one that a sent review judged, marked or measured. */
export interface BlindFrame {
  athleteId: string;
  /** Whose review it was of. */
  coachId: string;
  checkpointId: string;
  clipId: string;
  frame: number;
  view: CameraView;
  kind: SeriesKind;
}

/** How many frames a set has: fewer tell nothing of agreement, more are not rated in one go. Common practice, no source. */
export const BLIND_FRAMES = { min: 5, max: 40 } as const;

/**
 * Draws frames for a blind set: by chance, yet spread over athletes first, then over coaches, then over checkpoints, so
 * that no athlete or coach fills a set while another is left. The same seed and frames give the same set.
 * @param count at most as many as there are frames
 */
export function drawBlindFrames(frames: readonly BlindFrame[], count: number, seed: string): BlindFrame[] {
  const draw = seededDraws(seed);
  const left = shuffledBy(draw, frames);
  const drawn: BlindFrame[] = [];
  while (drawn.length < count && left.length > 0) {
    const at = left.reduce((best, each, index) => (comesBefore(each, left[best], drawn) ? index : best), 0);
    drawn.push(...left.splice(at, 1));
  }
  return shuffledBy(draw, drawn);
}

/* Of equal ones the first in the shuffled order stays. */
function comesBefore(one: BlindFrame, other: BlindFrame | undefined, drawn: readonly BlindFrame[]): boolean {
  if (other === undefined) return true;
  for (const key of ["athleteId", "coachId", "checkpointId"] as const) {
    const [times, otherTimes] = [one, other].map(
      (each) => drawn.filter((taken) => taken[key] === each[key]).length,
    );
    if (times !== otherTimes) return (times ?? 0) < (otherTimes ?? 0);
  }
  return false;
}
