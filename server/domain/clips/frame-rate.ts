/** WebM and Matroska keep times in whole milliseconds, so a spacing there is off by up to this. */
const ROUNDING_MS = 1;

/** A spacing this far from the usual one, as a share of it, is a dropped or a doubled frame. Common practice, no source. */
const ODD_SHARE = 0.25;

/** Spacings looked at together when a change of rate is looked for, and how far apart the looks lie. */
const WINDOW = 24;
const WINDOW_STEP = 6;

/** Fewer spacings than this say nothing of a change of rate. Common practice, no source. */
const MIN_WINDOW = 4;

/**
 * How many times wider the frames of one stretch must lie than those of another for the rate to ramp. Slow motion is
 * at least twice as slow; a camera that goes from 30 to 24 a second in poor light stays below. Common practice, no source.
 */
const RAMP_RATIO = 1.75;

/**
 * The rate a file plays at, in frames a second: the mean of those spacings that are near the usual one, so that
 * dropped frames and WebM's rounding do not count. Null for fewer than two frames.
 * @param frameTimesMs every frame's time, ascending
 * @example fileFps([0, 10, 20, 40, 50]) // 100: the frame that was dropped does not slow it
 */
export function fileFps(frameTimesMs: readonly number[]): number | null {
  const spacings = spacingsOf(frameTimesMs);
  const usual = [...spacings].sort((a, b) => a - b)[Math.floor(spacings.length / 2)];
  if (usual === undefined || usual <= 0) return null;
  const near = spacings.filter((each) => Math.abs(each - usual) <= Math.max(ROUNDING_MS, usual * ODD_SHARE));
  return 1000 / mean(near);
}

/**
 * Whether the speed of a clip changes on the way, as where a phone saved slow motion with its normal-speed beginning
 * and end. Single long gaps, dropped frames and a rate that wavers are no ramp. Where a phone has thinned the frames so
 * that they lie evenly again, the times tell nothing and this is false.
 */
export function rateRamps(frameTimesMs: readonly number[]): boolean {
  const spacings = spacingsOf(frameTimesMs);
  const width = Math.min(WINDOW, Math.floor(spacings.length / 2));
  if (width < MIN_WINDOW) return false;
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (let from = 0; from + width <= spacings.length; from += WINDOW_STEP) {
    const typical = middleMean(spacings.slice(from, from + width));
    least = Math.min(least, typical);
    most = Math.max(most, typical);
  }
  return most - least > ROUNDING_MS && most >= least * RAMP_RATIO;
}

function spacingsOf(frameTimesMs: readonly number[]): number[] {
  return frameTimesMs.slice(1).map((timeMs, index) => timeMs - (frameTimesMs[index] ?? timeMs));
}

/** The mean without the eighth that is smallest and the eighth that is largest, at least one of each. */
function middleMean(spacings: readonly number[]): number {
  const off = Math.max(1, Math.floor(spacings.length / 8));
  return mean([...spacings].sort((a, b) => a - b).slice(off, -off));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, each) => sum + each, 0) / values.length;
}
