/** Longest clip, in milliseconds: 3 minutes holds an inning's worth of pitches. Common practice, no source. */
export const MAX_CLIP_MS = 180_000;

/** Largest clip, in bytes: 1 GB. Common practice, no source. */
export const MAX_CLIP_BYTES = 1_000_000_000;

/**
 * What reading a file may find wrong with it. `not_video`: no container that can be read here, whatever the name says,
 * or no picture track in it. `cut_off`: it ends before the data it announces. `no_frames`: nothing to show.
 * `too_many_frames`: more than any camera films in three minutes. `not_copied`: no copy without its tags could be made.
 */
export type ProbeProblem = "empty" | "not_video" | "cut_off" | "no_frames" | "too_many_frames" | "not_copied";

/** What reading a file found: a problem, or how long it lasts. */
export type Probe =
  | { problem: ProbeProblem; byteCount: number }
  | { problem: null; byteCount: number; durationMs: number };

/** Why a file is not taken, with the facts of its sentence. */
export type ProbeRefusal =
  | { kind: ProbeProblem }
  | { kind: "too_big"; byteCount: number; maxBytes: number }
  | { kind: "too_long"; durationMs: number; maxMs: number };

/**
 * Why a file cannot become a clip, or null when it can. Its size is looked at first, its length last; exactly the
 * limit is allowed.
 */
export function judgeProbe(probe: Probe): ProbeRefusal | null {
  if (probe.byteCount > MAX_CLIP_BYTES) {
    return { kind: "too_big", byteCount: probe.byteCount, maxBytes: MAX_CLIP_BYTES };
  }
  if (probe.problem !== null) return { kind: probe.problem };
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
    case "too_many_frames":
      return "The video has more frames than can be stepped through. Nothing was kept. Film at a lower frame rate, or trim it.";
    case "not_copied":
      return "The video could not be freed of its place and device data. Nothing was kept. Send it again as the phone filmed it.";
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
