import { adjustForMany } from "@/server/domain/statistics/adjust-for-many";
import { CHANGE_WORDS, type Change, type SinceCorrection } from "./change";

/** Of the changes told over many checkpoints at most this share is to be false, in the long run. Common practice. */
export const FALSE_SHARE = 0.05;

/** One checkpoint's change as it was found alone. */
export interface LookedAt {
  id: string;
  since: SinceCorrection;
}

/** One checkpoint's change as it stands among all. */
export interface AmongMany extends LookedAt {
  /** The chance that error alone brings it, adjusted for all that were looked at; null where there was too little. */
  adjustedChance: number | null;
  /** It was more than error by itself and is not among so many. */
  fellAway: boolean;
}

/** All checkpoints that were looked at. */
export interface ManyCheckpoints {
  results: AmongMany[];
  lookedAt: number;
  tooFew: number;
  words: string[];
}

/**
 * Changes of many checkpoints weighed together, so that looking at many does not find what is not there: a change
 * stands while its chance by error alone, adjusted by Benjamini and Hochberg (1995) over all that could be compared, is
 * at most {@link FALSE_SHARE}; else it becomes no change that can be told from error. The chance by error and not that
 * of the exact test is adjusted: with three days a side the latter is never below 0.1, whatever happened; what the test
 * does not allow is not told anyway.
 * @param all every checkpoint that was looked at, not the promising ones
 * @returns in their order; of none, none
 * @example chances 0.01, 0.04 and 0.2, the first two told alone: the first stands at 0.03, the second falls away at 0.06
 */
export function manyCheckpoints(all: readonly LookedAt[]): ManyCheckpoints {
  const compared = all.flatMap(({ since }) => (since.kind === "change" ? [since] : []));
  const adjusted = adjustForMany(compared.map((each) => each.chanceByError));
  const results = all.map(({ id, since }) =>
    since.kind === "change"
      ? weighed(id, since, adjusted[compared.indexOf(since)] ?? 1)
      : { id, since, adjustedChance: null, fellAway: false },
  );
  const counts = { lookedAt: compared.length, tooFew: all.length - compared.length };
  return { results, ...counts, words: wordsOf(results, counts) };
}

function weighed(id: string, since: Change, adjustedChance: number): AmongMany {
  const fellAway = since.outcome !== "no_change" && adjustedChance > FALSE_SHARE;
  if (!fellAway) return { id, since, adjustedChance, fellAway };
  const words = CHANGE_WORDS.no_change;
  return { id, since: { ...since, outcome: "no_change", words }, adjustedChance, fellAway };
}

function wordsOf(
  results: readonly AmongMany[],
  counts: Pick<ManyCheckpoints, "lookedAt" | "tooFew">,
): string[] {
  const stand = results.filter(
    ({ since }) => since.kind === "change" && since.outcome !== "no_change",
  ).length;
  const fell = results.filter(({ fellAway }) => fellAway).length;
  const short = counts.tooFew;
  if (counts.lookedAt === 0 && short === 0) return ["No checkpoint was looked at."];
  return [
    `${counted(counts.lookedAt)} looked at together; ${stand} changed beyond measurement error.`,
    ...(fell === 0
      ? []
      : [
          `${fell} more would have by ${fell === 1 ? "itself" : "themselves"}: of so many, chance brings some.`,
        ]),
    ...(short === 0 ? [] : [`${counted(short)} left out, with too few observations.`]),
  ];
}

const counted = (count: number) => (count === 1 ? "1 checkpoint was" : `${count} checkpoints were`);
