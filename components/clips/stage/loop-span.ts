/** Frames that are played over and over. */
export interface LoopSpan {
  from: number;
  to: number;
}

/**
 * What is played over and over from a frame: from the marked moment at or before it to the one after; where there is
 * none, from the clip's start or to its end.
 * @param marks frames of marked moments, in any order
 * @example loopAround([20, 50], 30, 90) // { from: 20, to: 50 }
 */
export function loopAround(marks: readonly number[], frame: number, count: number): LoopSpan {
  const from = Math.max(0, ...marks.filter((mark) => mark <= frame && mark < count - 1));
  return { from, to: Math.min(count - 1, ...marks.filter((mark) => mark > Math.max(frame, from))) };
}

/** What a loop is laid on. */
interface LoopedPlayer {
  loop: LoopSpan | null;
  setLoop: (loop: LoopSpan | null) => void;
  wanted: number;
  isPlaying: boolean;
  toggle: () => void;
  clip: { frameTimesMs: readonly number[] };
}

/** Plays round the frame on the picture over and over, or no longer. */
export function loopFromHere(player: LoopedPlayer, marks: Partial<Record<string, number>> = {}): void {
  if (player.loop) {
    player.setLoop(null);
    return;
  }
  const frames = Object.values(marks).filter((frame) => frame !== undefined);
  player.setLoop(loopAround(frames, player.wanted, player.clip.frameTimesMs.length));
  if (!player.isPlaying) player.toggle();
}
