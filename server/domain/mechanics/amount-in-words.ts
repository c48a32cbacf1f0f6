import { MEASURES } from "./measure-kind";
import { sideInWords, valueInWords } from "./measure-value";
import type { SeriesKind } from "./observation";

/**
 * How much a change is, without its sign: to a tenth of a degree, a hundredth or a step, times to a thousandth second.
 * @example amountInWords("front_knee_flexion", -7.04) // "7°"
 * @example amountInWords("judgement", 1.5) // "1.5 steps"
 */
export function amountInWords(kind: SeriesKind, amount: number): string {
  const size = Math.abs(amount);
  if (kind === "judgement") return tenths(size) === "1" ? "1 step" : `${tenths(size)} steps`;
  const { unit } = MEASURES[kind];
  if (unit === "ms") return `${Math.round(size) / 1000} s`;
  return `${tenths(size)}${unit === "deg" ? "°" : " %"}`;
}

/**
 * {@link amountInWords} with its sign; nothing rounds to a signed 0.
 * @example signedInWords("front_knee_flexion", -0.36) // "−0.4°"
 */
export function signedInWords(kind: SeriesKind, amount: number): string {
  const words = amountInWords(kind, amount);
  return amount < 0 && Number.parseFloat(words) !== 0 ? `−${words}` : words;
}

/**
 * Where a value lies, with its side.
 * @example levelInWords("judgement", 1.5) // "1.5"
 * @example levelInWords("trunk_tilt_forward", -4.2) // "4° away from the plate"
 */
export function levelInWords(kind: SeriesKind, value: number): string {
  if (kind === "judgement") return tenths(value);
  const side = sideInWords(kind, value);
  return `${valueInWords(kind, value)}${side === "" ? "" : ` ${side}`}`;
}

/**
 * The least change that shows when it is written: a whole step, degree or hundredth, a hundredth of a second.
 * @example leastToTell("finish_hold") // 10
 */
export function leastToTell(kind: SeriesKind): number {
  return kind !== "judgement" && MEASURES[kind].unit === "ms" ? 10 : 1;
}

/**
 * A chance as it is written.
 * @example chanceInWords(0.0004) // "less than 0.001"
 */
export function chanceInWords(chance: number): string {
  return chance < 0.001 ? "less than 0.001" : chance.toFixed(chance < 0.1 ? 3 : 2);
}

const tenths = (value: number) => String(Math.round(value * 10) / 10);
