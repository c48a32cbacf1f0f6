/** Longest clip, in milliseconds: 3 minutes holds an inning's worth of pitches. Common practice, no source. */
export const MAX_CLIP_MS = 180_000;

/** Largest clip, in bytes: 1 GB. Common practice, no source. */
export const MAX_CLIP_BYTES = 1_000_000_000;

/** What reading a file's container found. */
export interface Probe {
  byteCount: number;
  /** False when the content is no video container, whatever the name says, or holds no picture track. */
  isVideo: boolean;
  /** False when the container ends before the data it announces. */
  isWhole: boolean;
  /** Frames that can be shown; trimmed ones before the start do not count. */
  frameCount: number;
  durationMs: number;
}

/** Why a file is not taken, with the facts of its sentence. */
export type ProbeRefusal =
  | { kind: "empty" }
  | { kind: "too_big"; byteCount: number; maxBytes: number }
  | { kind: "not_video" }
  | { kind: "cut_off" }
  | { kind: "no_frames" }
  | { kind: "too_long"; durationMs: number; maxMs: number };

/**
 * Why a file cannot become a clip, or null when it can. The first that holds of: empty, too big, not a video, cut off,
 * no frames, too long. Exactly the limit is allowed.
 */
export function judgeProbe(probe: Probe): ProbeRefusal | null {
  if (probe.byteCount === 0) return { kind: "empty" };
  if (probe.byteCount > MAX_CLIP_BYTES) {
    return { kind: "too_big", byteCount: probe.byteCount, maxBytes: MAX_CLIP_BYTES };
  }
  if (!probe.isVideo) return { kind: "not_video" };
  if (!probe.isWhole) return { kind: "cut_off" };
  if (probe.frameCount === 0) return { kind: "no_frames" };
  if (probe.durationMs > MAX_CLIP_MS) {
    return { kind: "too_long", durationMs: probe.durationMs, maxMs: MAX_CLIP_MS };
  }
  return null;
}

/** The sentence the sender reads: what happened, that nothing was kept, what to do. */
export function probeRefusalInWords(refusal: ProbeRefusal): string {
  switch (refusal.kind) {
    case "empty":
      return "The file is empty. Nothing was kept. Film again, or choose another file.";
    case "too_big":
      return `The file is ${gigabytes(refusal.byteCount)} GB and ${gigabytes(refusal.maxBytes)} GB is the most. Nothing was kept. Trim it to the pitches that matter, or film at a lower resolution.`;
    case "not_video":
      return "The file is not a video that can be read here. Nothing was kept. Choose the clip as the phone filmed it.";
    case "cut_off":
      return "The file stops in the middle: the end of the video is missing. Nothing was kept. Send it again from the phone that filmed it.";
    case "no_frames":
      return "The video has no pictures in it. Nothing was kept. Check that it plays on the phone, then send it again.";
    case "too_long":
      return `The video is ${minutes(refusal.durationMs)} long and ${minutes(refusal.maxMs)} is the most. Nothing was kept. Trim it to the pitches that matter and send it again.`;
  }
}

/** Rounded up, so that a file a byte too big never reads as exactly the limit. */
const gigabytes = (bytes: number) => (Math.ceil(bytes / 10_000_000) / 100).toString();

function minutes(durationMs: number): string {
  const seconds = Math.ceil(durationMs / 1000);
  return seconds % 60 === 0 ? `${seconds / 60} min` : `${Math.floor(seconds / 60)} min ${seconds % 60} s`;
}
