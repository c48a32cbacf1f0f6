/**
 * Codecs that every browser of today draws: H.264 in the profiles of 8 bits and plain colour (Baseline, Main, Extended,
 * High: 66, 77, 88, 100 in hexadecimal), VP8, VP9 and AV1. HEVC, ten bits and the editing codecs are drawn by some
 * devices alone. From memory of what browsers state.
 */
const DRAWN_EVERYWHERE = /^(avc[13]\.(42|4d|58|64)|vp8|vp0?9|av01)/i;

/** A copy's frame may lie this far from the original's: what rounding to 90,000 parts of a second leaves, and less than a player rounds. */
const SAME_TIME_MS = 0.05;

/** How to send a clip that no copy can be made of, in one plain sentence. */
export const HOW_TO_SEND_OTHERWISE =
  "To send it so that everybody sees it, set the phone's camera to its most compatible format (H.264) and film again, or send the copy that an editing app saves of this clip.";

/**
 * Whether a film of this codec is drawn by every browser of today; where not, a copy that is can be made.
 * @param codec the full codec string, such as `avc1.42c01f` or `hvc1.1.6.L93.B0`
 * @example drawnEverywhere("hvc1.1.6.L93.B0") // false
 */
export function drawnEverywhere(codec: string): boolean {
  return DRAWN_EVERYWHERE.test(codec);
}

/**
 * Whether a copy shows the same frames at the same times, so that a frame's number means one picture in both: as many
 * frames, each where it was.
 */
export function isSameTable(frameTimesMs: readonly number[], copyTimesMs: readonly number[]): boolean {
  return (
    frameTimesMs.length === copyTimesMs.length &&
    frameTimesMs.every(
      (timeMs, frame) => Math.abs(timeMs - (copyTimesMs[frame] ?? Number.NaN)) <= SAME_TIME_MS,
    )
  );
}
