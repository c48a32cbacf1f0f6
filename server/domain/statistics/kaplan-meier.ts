import { normalReach } from "./distributions";
import { requireFinite } from "./require-finite";
import { type TooFew, tooFew } from "./too-few";

/** How long one was watched, and whether it ended then or was still open. */
export interface Span {
  duration: number;
  hasEnded: boolean;
}

/** The curve from one ending to the next. */
export interface SurvivalStep {
  /** A duration at which something ended. */
  at: number;
  atRisk: number;
  ended: number;
  /** Share that lasts longer than `at`. */
  lasting: number;
  /** All three null once nothing lasts. */
  standardError: number | null;
  lower: number | null;
  upper: number | null;
}

/** What share lasts how long, the open ones counted for as long as they were watched. */
export interface KaplanMeier {
  kind: "kaplan_meier";
  watched: number;
  ended: number;
  steps: SurvivalStep[];
  /** See {@link lastingUntil}; null when half never ended. */
  median: number | null;
  /** The interval of the median; null on the side that is not reached. */
  medianLower: number | null;
  medianUpper: number | null;
}

/**
 * The product-limit estimate (Kaplan and Meier 1958, JASA 53:457-481) with Greenwood's standard error (1926) and the
 * interval on the scale of the logarithm, cut off at 1: R's default, `conf.type = "log"`. One that is still open at a
 * duration is at risk of an ending there. The median's interval runs to where the interval of the curve crosses a half
 * (Brookmeyer and Crowley 1982, Biometrics 38:29-41).
 * @param spans durations of 0 or more, in any order
 * @returns too_few without a span; no steps and no median where all are open
 * @throws RangeError for a negative duration: the caller's fault
 * @example the 6-MP arm of Freireich et al. 1963: .857 .807 .753 .690 .627 .538 .448, median 23
 */
export function kaplanMeier(spans: readonly Span[], level = 0.95): KaplanMeier | TooFew {
  requireFinite(spans.map((span) => span.duration));
  if (spans.some((span) => span.duration < 0)) throw new RangeError("A duration is 0 or more.");
  const reach = normalReach(level);
  if (spans.length === 0) return tooFew(0, 1);
  const steps = stepsOf(spans, reach);
  return {
    kind: "kaplan_meier",
    watched: spans.length,
    ended: spans.filter((span) => span.hasEnded).length,
    steps,
    median: lastingUntil(steps, 0.5),
    medianLower: firstAt(steps, (step) => (step.lower ?? 0) <= 0.5 + ROUNDING),
    medianUpper: firstAt(steps, (step) => step.upper !== null && step.upper <= 0.5 + ROUNDING),
  };
}

/**
 * The shortest duration that no more than this share outlasts.
 * @param share 0.5 for the median, 0.25 for the third quartile
 * @returns null when it is never reached
 * @example of the 6-MP arm: 23 for a half, null for a quarter
 */
export function lastingUntil(steps: readonly SurvivalStep[], share: number): number | null {
  return firstAt(steps, (step) => step.lasting <= share + ROUNDING);
}

/* A product of fractions that comes to a half exactly may be the last digit above it. */
const ROUNDING = 1e-12;

function firstAt(steps: readonly SurvivalStep[], isThere: (step: SurvivalStep) => boolean): number | null {
  return steps.find(isThere)?.at ?? null;
}

function stepsOf(spans: readonly Span[], reach: number): SurvivalStep[] {
  const endings = new Map<number, number>();
  const sorted = [...spans].sort((one, other) => one.duration - other.duration);
  const riskAt = new Map<number, number>();
  sorted.forEach(({ duration, hasEnded }, index) => {
    if (!riskAt.has(duration)) riskAt.set(duration, sorted.length - index);
    if (hasEnded) endings.set(duration, (endings.get(duration) ?? 0) + 1);
  });
  let lasting = 1;
  let greenwood = 0;
  return [...endings].map(([at, ended]) => {
    const atRisk = riskAt.get(at) ?? ended;
    lasting *= (atRisk - ended) / atRisk;
    greenwood += ended / (atRisk * (atRisk - ended));
    return { at, atRisk, ended, lasting, ...boundsOf(lasting, Math.sqrt(greenwood), reach) };
  });
}

function boundsOf(lasting: number, spread: number, reach: number) {
  if (lasting === 0) return { standardError: null, lower: null, upper: null };
  return {
    standardError: lasting * spread,
    lower: lasting * Math.exp(-reach * spread),
    upper: Math.min(1, lasting * Math.exp(reach * spread)),
  };
}
