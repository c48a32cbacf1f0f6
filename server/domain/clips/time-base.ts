import { fileFps, rateRamps } from "./frame-rate";

/**
 * What a clip's own times are worth. `true`: a millisecond of the file lasted 1 / `stretch` milliseconds on the mound; 8
 * for 240 frames a second saved to be played at 30, 1 where the film was not stretched. `unknown`: nobody has said how
 * fast it was recorded. `ramped`: its speed changes on the way. Without a true base only frames can be counted, and
 * `why` says so.
 */
export type TimeBase =
  | { kind: "true"; stretch: number; fileFps: number; capturedFps: number }
  | { kind: "unknown"; why: string }
  | { kind: "ramped"; why: string };

/** A number of frames, and how long they lasted on the mound; no time without a true base. */
export interface Duration {
  /** Negative when the second frame comes first. */
  frames: number;
  ms: number | null;
  errorMs: number | null;
}

/** Rates this near are one: 29.97 is called 30, and a phone's clock is not exact. Common practice, no source. */
const SAME_RATE_SHARE = 0.02;

const UNKNOWN: TimeBase = {
  kind: "unknown",
  why: "Frames only: nobody has said how many frames a second this clip was recorded at, and phones save slow motion stretched.",
};

const TOO_SHORT: TimeBase = {
  kind: "unknown",
  why: "Frames only: this clip has too few frames to tell its rate.",
};

const RAMPED: TimeBase = {
  kind: "ramped",
  why: "Frames only: the speed of this clip changes on the way, as where a phone slows only the middle. No times and no speeds are taken from it.",
};

/**
 * The time base of a clip. A rate that ramps comes first: no captured rate can mend it.
 * @param clip.frameTimesMs every frame's time in the file, ascending
 * @param clip.capturedFps frames a second as recorded, null while nobody has said
 * @example timeBaseOf({ frameTimesMs: [0, 40, 80, 120], capturedFps: 100 }) // true, stretch 4: 25 a second in the file
 */
export function timeBaseOf(clip: { frameTimesMs: readonly number[]; capturedFps: number | null }): TimeBase {
  const { frameTimesMs, capturedFps } = clip;
  const rate = fileFps(frameTimesMs);
  if (rate === null) return TOO_SHORT;
  if (rateRamps(frameTimesMs)) return RAMPED;
  if (capturedFps === null) return UNKNOWN;
  const quotient = capturedFps / rate;
  const stretch = Math.abs(quotient - 1) <= SAME_RATE_SHARE ? 1 : quotient;
  return { kind: "true", stretch, fileFps: rate, capturedFps };
}

/**
 * How long it took from one frame to another, on the mound. What is seen on a frame happened within half a frame of
 * it, so the error is half a frame at either end, together; where frames lie unevenly the wider side counts. A frame
 * outside the table gives no time.
 * @example durationBetween(base, [0, 10, 20, 30], 0, 3) // unstretched: { frames: 3, ms: 30, errorMs: 10 }
 */
export function durationBetween(
  base: TimeBase,
  frameTimesMs: readonly number[],
  fromFrame: number,
  toFrame: number,
): Duration {
  const frames = toFrame - fromFrame;
  const fromMs = frameTimesMs[fromFrame];
  const toMs = frameTimesMs[toFrame];
  if (base.kind !== "true" || fromMs === undefined || toMs === undefined) {
    return { frames, ms: null, errorMs: null };
  }
  const errorMs = halfFrameMs(frameTimesMs, fromFrame) + halfFrameMs(frameTimesMs, toFrame);
  return { frames, ms: (toMs - fromMs) / base.stretch, errorMs: errorMs / base.stretch };
}

/**
 * A duration as it is written: in seconds to the millisecond with its error, or in frames where there is no time. The
 * error is never rounded to nothing.
 * @example durationInWords({ frames: 36, ms: 150, errorMs: 4.17 }) // "0.150 s ± 0.004"
 * @example durationInWords({ frames: 36, ms: null, errorMs: null }) // "36 frames"
 */
export function durationInWords({ frames, ms, errorMs }: Duration): string {
  if (ms === null || errorMs === null) return frames === 1 ? "1 frame" : `${frames} frames`;
  return `${seconds(ms)} s ± ${seconds(Math.max(1, errorMs))}`;
}

const seconds = (ms: number) => (ms / 1000).toFixed(3);

function halfFrameMs(frameTimesMs: readonly number[], frame: number): number {
  const at = frameTimesMs[frame] ?? 0;
  const before = at - (frameTimesMs[frame - 1] ?? at);
  const after = (frameTimesMs[frame + 1] ?? at) - at;
  return Math.max(before, after) / 2;
}
