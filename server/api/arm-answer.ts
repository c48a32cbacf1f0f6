import { z } from "zod";
import { ARM_MARK_KINDS, armOnDay } from "@/server/domain/throwing/arm-marks";
import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import { adviceInSentences, limitInWords, whyInSentences } from "@/server/domain/throwing/why";

/** One state of an arm as it travels: a shape and its words. */
export const armMark = z.strictObject({
  kind: z.enum(ARM_MARK_KINDS),
  count: z.int().nullable(),
  freeOn: z.string().nullable(),
  words: z.string(),
});

/** What the book leaves an arm on a day: the words, why, and the shapes. */
export const armAnswer = z.strictObject({
  words: z.string(),
  why: z.array(z.string()),
  marks: z.array(armMark),
});

/** The value of {@link armAnswer}. */
export type ArmAnswer = z.output<typeof armAnswer>;

/**
 * Asks the books about an arm on a day and words the answer; advice stands after why. Since when nothing was reported
 * stands among the marks.
 */
export function answerFor(question: ArmQuestion): ArmAnswer {
  const { answer, marks } = armOnDay(question);
  return {
    words: limitInWords(answer),
    why: [...whyInSentences({ ...answer, nothingReportedSince: null }), ...adviceInSentences(answer)],
    marks,
  };
}
