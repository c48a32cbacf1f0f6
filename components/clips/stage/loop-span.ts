import type { FrameRun } from "./window-plan";

/** Frames that are played over and over, the last of them as well. */
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

/** The frames of a loop. */
export function loopRun({ from, to }: LoopSpan): FrameRun {
  return { from, to: to + 1 };
}

/** A frame of a loop, or the loop's first where it lies beside it. */
export function frameInSpan({ from, to }: LoopSpan, frame: number): number {
  return frame < from || frame > to ? from : frame;
}

/** Whether a film that shows a frame has to go back; the clip's last frame is its end, so from the one before that. */
export function isLapOver({ to }: LoopSpan, frame: number, count: number): boolean {
  return frame >= Math.min(to, count - 2);
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
