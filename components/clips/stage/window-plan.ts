/** Frames from one up to but not including another. */
export interface FrameRun {
  from: number;
  to: number;
}

/** What is held of a clip, and where its picture stands. */
export interface WindowState {
  playhead: number;
  /** The way the picture went last. */
  direction: -1 | 1;
  /** The most frames that may be held. */
  most: number;
  /** Frames of the clip. */
  count: number;
  isHeld: (frame: number) => boolean;
  /** Frames that are to be held all together, wherever the picture stands; no more than may be held. */
  whole?: FrameRun | null;
}

/** A second of most films, on a phone's screen a second or two of steps; common practice, no source. */
const MOST_FRAMES = 60;

/** What decoded pictures of one clip may take of a device's memory, and of one with little; common practice, no source. */
const MOST_BYTES = 160_000_000;
const MOST_BYTES_OF_LITTLE = 80_000_000;
const LITTLE_GB = 4;

/** Fewer would not be ahead of anything. */
const LEAST_FRAMES = 4;

/** A gap as near as this is filled at once; one farther off waits until it is worth a new start of the decoder. */
const NEAR_FRAMES = 12;

/** Going back, so many are decoded at a time, so that the first of them is soon there. */
const BACK_FRAMES = 16;

/**
 * How many pictures of a size may be held.
 * @param deviceGb the memory a browser says its device has, or undefined where it does not say
 * @example mostFrames({ widthPx: 1280, heightPx: 720 }, 1.5, 8) // 60
 */
export function mostFrames(
  { widthPx, heightPx }: { widthPx: number; heightPx: number },
  bytesPerPx: number,
  deviceGb: number | undefined,
): number {
  const bytes = deviceGb !== undefined && deviceGb <= LITTLE_GB ? MOST_BYTES_OF_LITTLE : MOST_BYTES;
  const fitting = Math.floor(bytes / (widthPx * heightPx * bytesPerPx));
  return Math.max(LEAST_FRAMES, Math.min(MOST_FRAMES, fitting));
}

/**
 * The frames worth holding: two thirds of them in the direction of travel; near an end of the clip the other side has
 * what that end leaves over. A run that is to be held whole is all of them.
 * @example windowSpan({ playhead: 50, direction: 1, most: 30, count: 200 }) // { from: 40, to: 70 }
 */
export function windowSpan(state: Omit<WindowState, "isHeld">): FrameRun {
  const { playhead, direction, most, count, whole } = state;
  if (whole) return whole;
  const behind = Math.floor(most / 3);
  const wanted = direction === 1 ? playhead - behind : playhead + 1 + behind - most;
  const from = Math.max(0, Math.min(wanted, count - most));
  return { from, to: Math.min(count, from + most) };
}

/**
 * The frames to decode next: the one that is asked for before all, then those in the direction of travel, then those
 * behind. A decoder starts at a key frame, so a short gap far off is left until it is worth it, but none
 * in a run that is to be held whole.
 * @returns null when there is nothing worth decoding
 */
export function nextRun(state: WindowState): FrameRun | null {
  const { playhead, direction } = state;
  const span = windowSpan(state);
  if (state.whole) {
    const first = firstGap({ ...state, playhead: span.from - 1 }, span, 1);
    return first === null ? null : runFrom(state, span, first, 1);
  }
  if (!state.isHeld(playhead)) return runFrom(state, span, playhead, direction);
  for (const way of [direction, direction === 1 ? -1 : 1] as const) {
    const gap = firstGap(state, span, way);
    if (gap === null) continue;
    const run = runFrom(state, span, gap, way);
    if (Math.abs(gap - playhead) <= NEAR_FRAMES || isWorthAStart(state, run)) return run;
  }
  return null;
}

function firstGap({ playhead, isHeld }: WindowState, span: FrameRun, way: -1 | 1): number | null {
  for (let frame = playhead + way; frame >= span.from && frame < span.to; frame += way) {
    if (!isHeld(frame)) return frame;
  }
  return null;
}

/** The missing frames from one on, as far as they go without one that is held. */
function runFrom({ isHeld }: WindowState, span: FrameRun, first: number, way: -1 | 1): FrameRun {
  const farthest = way === 1 ? span.to - 1 : Math.max(span.from, first - BACK_FRAMES + 1);
  let last = first;
  while (last !== farthest && !isHeld(last + way)) last += way;
  return way === 1 ? { from: first, to: last + 1 } : { from: last, to: first + 1 };
}

function isWorthAStart({ most, count }: WindowState, run: FrameRun): boolean {
  return run.to - run.from >= Math.min(BACK_FRAMES, most / 4) || run.from === 0 || run.to === count;
}
