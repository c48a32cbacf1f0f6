import { z } from "zod";
import { DELIVERY_EVENTS, DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { judgementScore } from "@/server/domain/mechanics/judgement";
import { GUIDE_POINTS, MARK_GUIDES } from "@/server/domain/mechanics/mark-guide";
import { MEASURE_KINDS, MEASURES } from "@/server/domain/mechanics/measure-kind";
import { OPEN_VERDICTS, VERDICTS } from "./correction-state";

/** What a coach can be writing: the review of a clip, or the check of a reply. */
export const DRAFT_KINDS = ["review", "check"] as const;

/** What a coach can be writing. */
export type DraftKind = (typeof DRAFT_KINDS)[number];

/** Bounds on a draft, so that no document grows without end. Common practice, no source. */
export const DRAFT_LIMITS = {
  cueLength: 500,
  drillLength: 500,
  keepLength: 500,
  noteLength: 1000,
  eventMarks: 72,
  judgements: 200,
  keeps: 12,
  corrections: 10,
  verdicts: 60,
  frame: 1_000_000,
  measures: 60,
  marks: 60,
  /** Points of one stroke of the pencil. */
  strokePoints: 400,
  /** A note on the picture is a few words. */
  markTextLength: 80,
  /** Longest side of a picture, in pixels; a point may lie a little outside it. */
  placePx: 20_000,
} as const;

const id = z.string().min(1).max(64);
const frame = z.int().min(0).max(DRAFT_LIMITS.frame);
const note = z.string().max(DRAFT_LIMITS.noteLength);
/** Whether no two rows agree in all of these keys. */
const once =
  <Row>(...keys: (keyof Row)[]) =>
  (rows: Row[]) =>
    new Set(rows.map((row) => JSON.stringify(keys.map((key) => row[key])))).size === rows.length;

/** The frame, counted from 0, on which a moment of the delivery was marked. */
export const eventMarkSchema = z.strictObject({ clipId: id, event: z.enum(DELIVERY_EVENTS), frame });
export type EventMark = z.infer<typeof eventMarkSchema>;

/** A checkpoint judged on one frame of one clip. */
export const draftJudgementSchema = z.strictObject({
  checkpointId: id,
  clipId: id,
  frame,
  score: judgementScore,
});
export type DraftJudgement = z.infer<typeof draftJudgementSchema>;

/** A strength worth keeping; on a frame, or of the delivery as a whole (clip and frame null). */
export const draftKeepSchema = z.strictObject({
  id,
  checkpointId: id.nullable(),
  phase: z.enum(DELIVERY_PHASES),
  text: z.string().max(DRAFT_LIMITS.keepLength),
  clipId: id.nullable(),
  frame: frame.nullable(),
  /** A spoken note on it. */
  voiceId: id.nullable(),
});
export type DraftKeep = z.infer<typeof draftKeepSchema>;

/** A correction as it is being written: the cue may still be empty, the drill may stay so. */
export const draftCorrectionSchema = z.strictObject({
  id,
  checkpointId: id,
  phase: z.enum(DELIVERY_PHASES),
  cue: z.string().max(DRAFT_LIMITS.cueLength),
  drill: z.string().max(DRAFT_LIMITS.drillLength),
  clipId: id,
  frame,
  /** A spoken note on it. */
  voiceId: id.nullable(),
});
export type DraftCorrection = z.infer<typeof draftCorrectionSchema>;

const px = z.number().min(-DRAFT_LIMITS.placePx).max(DRAFT_LIMITS.placePx);

/** A place on the upright picture, in source pixels from its upper left corner. */
export const placeSchema = z.strictObject({ x: px, y: px });
export type Place = z.infer<typeof placeSchema>;

/** A point of a measure, on the frame it was placed on. */
export const measuredPointSchema = z.strictObject({ frame, x: px, y: px });
export type MeasuredPoint = z.infer<typeof measuredPointSchema>;

/**
 * A measure as it was taken: its points in the order its kind asks for them, all of them. `frame` is the frame that is
 * measured; `untilFrame` is where a held finish ends, null for every other kind.
 */
export const draftMeasureSchema = z
  .strictObject({
    id,
    kind: z.enum(MEASURE_KINDS),
    checkpointId: id.nullable(),
    clipId: id,
    frame,
    untilFrame: frame.nullable(),
    points: z.array(measuredPointSchema).max(8),
  })
  .refine(({ kind, points }) => points.length === MEASURES[kind].points.length, "Place every point.")
  .refine(
    ({ kind, untilFrame }) => (kind === "finish_hold") === (untilFrame !== null),
    "Name the last frame.",
  );
export type DraftMeasure = z.infer<typeof draftMeasureSchema>;

/** A mark that shows what a checkpoint means, on one frame, or on every frame to `untilFrame` (that one included). */
export const draftMarkSchema = z
  .strictObject({
    id,
    checkpointId: id.nullable(),
    clipId: id,
    frame,
    untilFrame: frame.nullable(),
    guide: z.enum(MARK_GUIDES),
    points: z.array(placeSchema).max(DRAFT_LIMITS.strokePoints),
    /** The words of a note; empty for every other guide. */
    text: z.string().max(DRAFT_LIMITS.markTextLength),
  })
  .refine(
    ({ guide, points }) =>
      guide === "pencil" ? points.length >= GUIDE_POINTS.pencil : points.length === GUIDE_POINTS[guide],
    "Place every point.",
  )
  .refine(
    (mark) => mark.untilFrame === null || mark.untilFrame >= mark.frame,
    "A span ends after it begins.",
  );
export type DraftMark = z.infer<typeof draftMarkSchema>;

/** A verdict as it is being given: null while there is none. */
export const draftVerdictSchema = z.strictObject({
  correctionId: id,
  verdict: z.enum(VERDICTS).nullable(),
  note,
  clipId: id.nullable(),
  frame: frame.nullable(),
});
export type DraftVerdict = z.infer<typeof draftVerdictSchema>;

/** A correction from before that is seen again on a clip of this round: it stays open, and no other is given for it. */
export const draftShownAgainSchema = z.strictObject({
  correctionId: id,
  verdict: z.enum(OPEN_VERDICTS),
  note,
  clipId: id,
  frame,
});
export type DraftShownAgain = z.infer<typeof draftShownAgainSchema>;

const eventMarks = z
  .array(eventMarkSchema)
  .max(DRAFT_LIMITS.eventMarks)
  .refine(once<EventMark>("clipId", "event"), "Mark each event once on a clip.");
const judgements = z
  .array(draftJudgementSchema)
  .max(DRAFT_LIMITS.judgements)
  .refine(once<DraftJudgement>("checkpointId", "clipId"), "Judge each checkpoint once on a clip.");

const measures = z
  .array(draftMeasureSchema)
  .max(DRAFT_LIMITS.measures)
  .refine(once<DraftMeasure>("id"), "Name each measure once.");
const marks = z
  .array(draftMarkSchema)
  .max(DRAFT_LIMITS.marks)
  .refine(once<DraftMark>("id"), "Name each mark once.");

/** A review as it is being written. Saved whole with every change; what is missing shows only when it is sent. */
export const reviewDraftSchema = z.strictObject({
  eventMarks,
  judgements,
  measures,
  marks,
  keeps: z
    .array(draftKeepSchema)
    .max(DRAFT_LIMITS.keeps)
    .refine(once<DraftKeep>("id"), "Name each keep once."),
  corrections: z
    .array(draftCorrectionSchema)
    .max(DRAFT_LIMITS.corrections)
    .refine(once<DraftCorrection>("id"), "Name each correction once."),
  shownAgain: z
    .array(draftShownAgainSchema)
    .max(DRAFT_LIMITS.verdicts)
    .refine(once<DraftShownAgain>("correctionId"), "Show each correction again once."),
});
export type ReviewDraft = z.infer<typeof reviewDraftSchema>;

/** A check as it is being written: a verdict for each correction, or the reason it is no longer wanted. */
export const checkDraftSchema = z.strictObject({
  eventMarks,
  judgements,
  measures,
  marks,
  verdicts: z
    .array(draftVerdictSchema)
    .max(DRAFT_LIMITS.verdicts)
    .refine(once<DraftVerdict>("correctionId"), "Give each correction one verdict."),
  retirements: z
    .array(z.strictObject({ correctionId: id, reason: note }))
    .max(DRAFT_LIMITS.verdicts)
    .refine(once<{ correctionId: string; reason: string }>("correctionId"), "Retire each correction once."),
  note,
});
export type CheckDraft = z.infer<typeof checkDraftSchema>;

/** A review of which nothing is written yet. */
export const EMPTY_REVIEW_DRAFT: ReviewDraft = {
  eventMarks: [],
  judgements: [],
  measures: [],
  marks: [],
  keeps: [],
  corrections: [],
  shownAgain: [],
};

/** A check of which nothing is written yet. */
export const EMPTY_CHECK_DRAFT: CheckDraft = {
  eventMarks: [],
  judgements: [],
  measures: [],
  marks: [],
  verdicts: [],
  retirements: [],
  note: "",
};
