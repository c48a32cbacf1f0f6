import { timeBaseOf } from "@/server/domain/clips/time-base";
import { secondsInWords } from "./frame-table";
import type { PlayedClip } from "./played-clip";

/**
 * Every frame's time on the mound in milliseconds, a stretched file's shrunk to what it was; null where that is not
 * known, for then only frames can be counted.
 * @example trueTimesMs({ frameTimesMs: [0, 40, 80, 120], capturedFps: 100 }) // [0, 10, 20, 30]
 */
export function trueTimesMs(
  clip: Pick<PlayedClip, "frameTimesMs" | "capturedFps">,
): readonly number[] | null {
  const base = timeBaseOf(clip);
  return base.kind === "true" ? clip.frameTimesMs.map((timeMs) => timeMs / base.stretch) : null;
}

/** A frame's place in time as the player tells it. @example playedTimeInWords([0, 10, 20], 2) // "0.020 s", and "" of null */
export function playedTimeInWords(timesMs: readonly number[] | null, frame: number): string {
  return timesMs === null ? "" : secondsInWords(timesMs[frame] ?? 0);
}
