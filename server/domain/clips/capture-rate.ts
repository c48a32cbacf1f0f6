import { fileFps } from "./frame-rate";

/**
 * How whoever films says how fast: `normal` is the file's own rate, `unknown` leaves it to the coach. It is asked once
 * per device, since a phone is seldom set anew.
 */
export const FILMED_SPEEDS = ["normal", "slow_120", "slow_240", "unknown"] as const;
export type FilmedSpeed = (typeof FILMED_SPEEDS)[number];

/** The speeds as they are written on a screen. */
export const FILMED_SPEED_WORDS: Record<FilmedSpeed, string> = {
  normal: "Normal speed",
  slow_120: "Slow motion, 120",
  slow_240: "Slow motion, 240",
  unknown: "I don't know",
};

/** Bounds of a captured rate, in frames a second: what cameras for the hand record at. Common practice, no source. */
export const MIN_CAPTURED_FPS = 1;
export const MAX_CAPTURED_FPS = 1000;

/** The rates phones and small cameras record at, in frames a second. Common practice, no source. */
const USUAL_RATES = [24, 25, 30, 50, 60, 100, 120, 200, 240, 480, 960] as const;

/** Foot contact to ball release, in milliseconds: Seroyer et al. 2010, Sports Health 2:135-146. */
export const CONTACT_TO_RELEASE_MS = 145;

/** A rate further below the file's own than this is no slow motion: it contradicts the file. */
const SAME_RATE_SHARE = 0.02;

/**
 * The captured rate that follows from what the sender says, in frames a second; null where nothing follows: they do not
 * know, the file has too few frames, or it plays faster than it is said to have been recorded.
 * @example capturedFpsSaid("slow_240", [0, 40, 80]) // 240
 */
export function capturedFpsSaid(said: FilmedSpeed, frameTimesMs: readonly number[]): number | null {
  const rate = fileFps(frameTimesMs);
  if (rate === null || said === "unknown") return null;
  if (said === "normal") return rate;
  const capturedFps = said === "slow_120" ? 120 : 240;
  return capturedFps < rate * (1 - SAME_RATE_SHARE) ? null : capturedFps;
}

/**
 * The rates a clip may have been recorded at, in frames a second, the file's own first: the usual ones that are
 * faster. Empty for a clip of too few frames.
 * @example captureChoices([0, 10, 20]) // [100, 120, 200, 240, 480, 960]
 */
export function captureChoices(frameTimesMs: readonly number[]): number[] {
  const rate = fileFps(frameTimesMs);
  if (rate === null) return [];
  return [rate, ...USUAL_RATES.filter((each) => each > rate * (1 + SAME_RATE_SHARE))];
}

/**
 * How long contact to release took at a captured rate, in milliseconds: the check of a rate against what is known of
 * pitchers. Null where the marks are not on two frames of the table, contact first.
 * @example contactToReleaseMs([0, 33.3, 66.7], { contact: 0, release: 2 }, 240) // 8.3
 */
export function contactToReleaseMs(
  frameTimesMs: readonly number[],
  marks: { contact: number | undefined; release: number | undefined },
  capturedFps: number,
): number | null {
  const rate = fileFps(frameTimesMs);
  const from = frameTimesMs[marks.contact ?? -1];
  const to = frameTimesMs[marks.release ?? -1];
  if (rate === null || from === undefined || to === undefined || to <= from) return null;
  return ((to - from) * rate) / capturedFps;
}

/**
 * Of the rates a clip may have been recorded at, the one that brings contact to release nearest to the published time,
 * by ratio; null where that cannot be told.
 */
export function likelyCapturedFps(
  frameTimesMs: readonly number[],
  marks: { contact: number | undefined; release: number | undefined },
): number | null {
  let likely: { capturedFps: number; off: number } | null = null;
  for (const capturedFps of captureChoices(frameTimesMs)) {
    const ms = contactToReleaseMs(frameTimesMs, marks, capturedFps);
    if (ms === null) return null;
    const off = Math.abs(Math.log(ms / CONTACT_TO_RELEASE_MS));
    if (likely === null || off < likely.off) likely = { capturedFps, off };
  }
  return likely?.capturedFps ?? null;
}

/** A rate as it is written: whole where it is one, else to a hundredth. @example rateInWords(30000 / 1001) // "29.97" */
export function rateInWords(fps: number): string {
  return String(Math.round(fps * 100) / 100);
}
