import { mean } from "./mean";
import { requireFinite } from "./require-finite";
import { type TooFew, tooFew } from "./too-few";

/** Mean moving range of two neighbours in standard deviations: d2 for n = 2 as NIST rounds it. */
const D2 = 1.128;
/** Greatest moving range to expect, in mean moving ranges: D4 for n = 2. */
const D4 = 3.267;
/** Points in a row on one side of the centre that make a run. */
export const RUN_LENGTH = 8;
/** A moving range takes two values; one is the least there can be. */
export const CHART_NEEDS = 2;

/** What flags a point: outside the limits, or the eighth and each further one of a run on one side. */
export interface ChartSignal {
  index: number;
  rule: "beyond_limits" | "run_of_eight";
  side: "above" | "below";
}

/** An individuals chart with its moving ranges. */
export interface ProcessChart {
  kind: "process_chart";
  centre: number;
  lower: number;
  upper: number;
  /** From each value to the next, whatever the sign. */
  movingRanges: number[];
  meanRange: number;
  rangeLimit: number;
  /** In the order of the values; a point outside the limits within a run is told twice. */
  signals: ChartSignal[];
}

/**
 * The individuals and moving range chart (NIST/SEMATECH e-Handbook, section 6.3.2.2): limits at the mean and 3 / 1.128
 * mean moving ranges to either side, for the ranges themselves at 3.267 of them.
 *
 * A shift is flagged by two of the four rules of the Western Electric handbook (1956): a point beyond a limit, and
 * eight in a row on one side of the centre; a point on the centre ends a run. The two zone rules between are left out:
 * with all four a process where nothing changed is flagged once in 92 points, with these two once in 153 (Champ and
 * Woodall 1987, Technometrics 29:393-399, from memory).
 * @param values in the order of time; spacing does not count
 * @param baseCount how many of the first values the limits rest on, all when left out: those before a change
 * @returns too_few below two values of the base; where all of these are equal any other value is beyond
 * @throws RangeError for a base that is not a whole number from 0 to all: the caller's fault
 * @example the ten values of NIST: 45.8159 to 55.8041 around 50.81
 */
export function processChart(values: readonly number[], baseCount = values.length): ProcessChart | TooFew {
  requireFinite(values);
  const isCount = Number.isInteger(baseCount) && baseCount >= 0 && baseCount <= values.length;
  if (!isCount) throw new RangeError(`The first ${baseCount} of ${values.length} values are no base.`);
  const movingRanges = values.slice(1).map((value, index) => Math.abs(value - (values[index] ?? value)));
  const centre = mean(values.slice(0, baseCount));
  const meanRange = mean(movingRanges.slice(0, Math.max(0, baseCount - 1)));
  if (centre === null || meanRange === null) return tooFew(baseCount, CHART_NEEDS);
  const lower = centre - (3 * meanRange) / D2;
  const upper = centre + (3 * meanRange) / D2;
  return {
    kind: "process_chart",
    ...{ centre, lower, upper, movingRanges, meanRange },
    rangeLimit: D4 * meanRange,
    signals: signalsOf(values, { centre, lower, upper }),
  };
}

function signalsOf(values: readonly number[], lines: { centre: number; lower: number; upper: number }) {
  const signals: ChartSignal[] = [];
  let run = 0;
  values.forEach((value, index) => {
    const direction = Math.sign(value - lines.centre);
    const isLonger = direction !== 0 && direction === Math.sign(run);
    run = isLonger ? run + direction : direction;
    const side = direction > 0 ? "above" : "below";
    if (value > lines.upper || value < lines.lower) signals.push({ index, rule: "beyond_limits", side });
    if (Math.abs(run) >= RUN_LENGTH) signals.push({ index, rule: "run_of_eight", side });
  });
  return signals;
}
