import {
  type CheckDraft,
  EMPTY_CHECK_DRAFT,
  EMPTY_REVIEW_DRAFT,
  type ReviewDraft,
} from "@/server/domain/reviews/draft";

/* Rows of drafts that are whole; a test changes what it is about. */

export const correction = (changes: Partial<ReviewDraft["corrections"][number]> = {}) => ({
  id: "c1",
  checkpointId: "hips-lead",
  phase: "stride" as const,
  cue: "Hip first",
  drill: "",
  clipId: "side",
  frame: 143,
  voiceId: null,
  ...changes,
});
/** Checkpoints of the stride, for several corrections at once: each is corrected once at a time. */
const OF_THE_STRIDE = [
  ...["hips-lead", "hand-on-top", "stride-length", "stride-direction"],
  ...["front-foot-closed", "front-shoulder-closed", "arm-up-in-time"],
];
export const strideCheckpoint = (index: number): string => {
  const id = OF_THE_STRIDE[index];
  if (id === undefined) throw new RangeError(`No checkpoint ${index} of the stride is listed.`);
  return id;
};
export const keep = (changes: Partial<ReviewDraft["keeps"][number]> = {}) => ({
  id: "k1",
  checkpointId: null,
  phase: "wind_up" as const,
  text: "Quiet start",
  clipId: null,
  frame: null,
  voiceId: null,
  ...changes,
});
export const shownAgain = (
  correctionId: string,
  changes: Partial<ReviewDraft["shownAgain"][number]> = {},
) => ({
  correctionId,
  verdict: "not_yet" as const,
  note: "",
  clipId: "side",
  frame: 143,
  ...changes,
});
export const review = (changes: Partial<ReviewDraft> = {}): ReviewDraft => ({
  ...EMPTY_REVIEW_DRAFT,
  corrections: [correction()],
  ...changes,
});
export const check = (changes: Partial<CheckDraft> = {}): CheckDraft => ({
  ...EMPTY_CHECK_DRAFT,
  ...changes,
});
export const verdict = (correctionId: string, changes: Partial<CheckDraft["verdicts"][number]> = {}) => ({
  correctionId,
  verdict: "yes" as const,
  note: "",
  clipId: null,
  frame: null,
  ...changes,
});
export const many = <T>(count: number, row: (index: number) => T) =>
  Array.from({ length: count }, (_, index) => row(index));
