import { SPEEDS, type Speed } from "@/components/clips/use-playback";
import type { ClipView } from "@/server/api/reviews/shapes";
import { timeBaseOf } from "@/server/domain/clips/time-base";

/** Half a second to either side of a frame shows what leads to it and what it leads to. Common practice, no source. */
const AROUND_MS = 500;

/** A quarter of the true speed is slow enough to follow by eye. Common practice, no source. */
const SLOW = 0.25;

/** A stretch of a clip round a frame, and the speed at which it is slow. */
export interface SlowSpan {
  from: number;
  to: number;
  rest: number;
  speed: Speed;
}

/**
 * Half a second before a frame to half a second after it, at a quarter of the true speed: a film that its phone has
 * stretched is slow already, and lasts longer in the file. Without a true time base the file's own times stand.
 */
export function slowSpan(clip: Pick<ClipView, "frameTimesMs" | "capturedFps">, frame: number): SlowSpan {
  const base = timeBaseOf(clip);
  const stretch = base.kind === "true" ? base.stretch : 1;
  const times = clip.frameTimesMs;
  const atMs = times[frame] ?? 0;
  const from = times.findIndex((timeMs) => timeMs >= atMs - AROUND_MS * stretch);
  const to = times.findLastIndex((timeMs) => timeMs <= atMs + AROUND_MS * stretch);
  const speed = SPEEDS.find((each) => each <= SLOW * stretch) ?? SLOW;
  return { from: Math.max(0, from), to, rest: frame, speed };
}
