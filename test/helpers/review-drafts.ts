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
