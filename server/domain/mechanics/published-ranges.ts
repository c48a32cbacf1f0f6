import { amountInWords } from "./amount-in-words";
import type { DeliveryEvent } from "./delivery";
import { MEASURES, type MeasureKind } from "./measure-kind";
import { KAGEYAMA_2015 } from "./source-names";

/** What a study measured of one group of pitchers. */
export interface PublishedRange {
  level: "adolescent" | "collegiate";
  ages: string;
  n: number;
  mean: number;
  /** Standard deviation: two of three pitchers of the group lie within one of the mean. */
  sd: number;
  source: string;
}

/** How the two groups of Kageyama 2015 were made up. */
const GROUPS = {
  adolescent: { ages: "12 to 15", n: 32 },
  collegiate: { ages: "18 to 22", n: 30 },
} as const;

type Pair = readonly [mean: number, sd: number];

/* Kageyama 2015, Tables 2 and 3, by motion capture: adolescent, then collegiate. */
const MEASURED: Partial<Record<MeasureKind, Partial<Record<DeliveryEvent, readonly [Pair, Pair]>>>> = {
  stride_length: {
    front_foot_contact: [
      [82.9, 6.1],
      [84.6, 4.2],
    ],
  },
  front_knee_flexion: {
    front_foot_contact: [
      [40.0, 8.2],
      [46.8, 8.5],
    ],
    ball_release: [
      [31.4, 15.6],
      [38.0, 13.7],
    ],
  },
  trunk_tilt_forward: {
    front_foot_contact: [
      [-2.1, 6.6],
      [-4.0, 4.8],
    ],
    ball_release: [
      [29.3, 7.6],
      [25.4, 7.6],
    ],
  },
};

/**
 * What was published of a measure at a moment, by level: context to draw a series on, never a pass or a fail. The
 * figures come of motion capture, those of a phone are projections; and where most pitchers are is not where one should be.
 * @returns none where no study was found
 * @example publishedRanges("stride_length", "front_foot_contact")[0] // 82.9 ± 6.1 of 32 adolescents
 */
export function publishedRanges(kind: MeasureKind, event: DeliveryEvent): PublishedRange[] {
  const pairs = MEASURED[kind]?.[event];
  if (pairs === undefined) return [];
  return (["adolescent", "collegiate"] as const).map((level, at) => {
    const [mean, sd] = pairs[at === 0 ? 0 : 1];
    return { level, ...GROUPS[level], mean, sd, source: KAGEYAMA_2015 };
  });
}

/**
 * A published range in words, with its n and its source.
 * @example "Adolescent pitchers aged 12 to 15: 82.9 % of standing height, standard deviation 6.1 % (n = 32; Kageyama et
 *   al. 2015, J Sports Sci Med 14:246). Context, not a target."
 */
export function publishedInWords(kind: MeasureKind, range: PublishedRange): string {
  const { level, ages, n, mean, sd, source } = range;
  const { of } = MEASURES[kind];
  const group = `${level.charAt(0).toUpperCase()}${level.slice(1)} pitchers aged ${ages}`;
  const middle = `${mean < 0 ? "−" : ""}${amountInWords(kind, mean)}${of === "" ? "" : ` of ${of}`}`;
  return `${group}: ${middle}, standard deviation ${amountInWords(kind, sd)} (n = ${n}; ${source}). Context, not a target.`;
}
