import { z } from "zod";

/** The four steps on which a checkpoint is judged on one clip, worst first; the index is the score. */
export const JUDGEMENT_WORDS = ["absent", "slight", "mostly", "clear"] as const;

/** How well a checkpoint shows on one clip: a whole number from 0 (absent) to 3 (clear). */
export type JudgementScore = 0 | 1 | 2 | 3;

/** Accepts exactly the whole numbers 0, 1, 2 and 3. */
export const judgementScore = z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)], {
  error: "A judgement is 0 absent, 1 slight, 2 mostly or 3 clear.",
});

/** The word for a score. @example judgementWord(2) // "mostly" */
export function judgementWord(score: JudgementScore): (typeof JUDGEMENT_WORDS)[number] {
  return JUDGEMENT_WORDS[score];
}
