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
