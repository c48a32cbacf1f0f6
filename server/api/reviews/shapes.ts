import { z } from "zod";
import {
  CAPTURE_SOURCES,
  CLIP_PARTS,
  CLIP_STATES,
  CONVERSION_STATES,
  PITCH_TYPES,
} from "@/server/domain/clips/clip";
import { checkpointSchema } from "@/server/domain/mechanics/checkpoint";
import { CAMERA_VIEWS, DELIVERY_EVENTS, DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { judgementScore } from "@/server/domain/mechanics/judgement";
import { MEASURE_KINDS } from "@/server/domain/mechanics/measure-kind";
import { CORRECTION_EVENT_KINDS, CORRECTION_STATES } from "@/server/domain/reviews/correction-state";
import {
  checkDraftSchema,
  DRAFT_KINDS,
  draftJudgementSchema,
  draftKeepSchema,
  draftMarkSchema,
  eventMarkSchema,
  measuredPointSchema,
  reviewDraftSchema,
} from "@/server/domain/reviews/draft";
import { ROUND_STATES } from "@/server/domain/reviews/round-state";
import { athleteHead } from "../athlete-head";
import { templateShape } from "./template-shape";

/** Ids in an input. */
export const idInput = z.string().min(1).max(64);

/** A clip as a screen plays it. */
export const clipShape = z.strictObject({
  id: z.string(),
  roundId: z.string(),
  part: z.enum(CLIP_PARTS),
  state: z.enum(CLIP_STATES),
  view: z.enum(CAMERA_VIEWS).nullable(),
  pitchType: z.enum(PITCH_TYPES).nullable(),
  pitchesThrown: z.number().nullable(),
  note: z.string().nullable(),
  filmedOn: z.string().nullable(),
  retainUntil: z.string(),
  widthPx: z.number().nullable(),
  heightPx: z.number().nullable(),
  durationMs: z.number().nullable(),
  hasPoster: z.boolean(),
  /** The full codec string; null while there is no film. */
  codec: z.string().nullable(),
  capturedFps: z.number().nullable(),
  captureSource: z.enum(CAPTURE_SOURCES).nullable(),
  conversion: z.enum(CONVERSION_STATES).nullable(),
  conversionShare: z.number().nullable(),
  frameCount: z.number(),
  frameTimesMs: z.array(z.number()),
});
/** A clip as a screen plays it. */
export type ClipView = z.output<typeof clipShape>;

/** A correction with its history. */
export const correctionShape = z.strictObject({
  id: z.string(),
  roundId: z.string(),
  checkpointId: z.string(),
  checkpointName: z.string(),
  phase: z.enum(DELIVERY_PHASES),
  event: z.enum(DELIVERY_EVENTS),
  cue: z.string(),
  drill: z.string(),
  clipId: z.string().nullable(),
  frame: z.number().nullable(),
  position: z.number(),
  /** A spoken note on it; null when there is none. */
  voiceId: z.string().nullable(),
  state: z.enum(CORRECTION_STATES),
  cameBack: z.boolean(),
  yesInARow: z.number(),
  givenAtMs: z.number(),
  givenOn: z.string(),
  happenings: z.array(
    z.strictObject({
      kind: z.enum(CORRECTION_EVENT_KINDS),
      atMs: z.number(),
      reason: z.string(),
      roundId: z.string().nullable(),
      clipId: z.string().nullable(),
      frame: z.number().nullable(),
    }),
  ),
  practisedOn: z.array(z.string()),
  /** The days the family may tick, oldest first. */
  tickableDays: z.array(z.string()),
});
/** A correction with its history. */
export type CorrectionView = z.output<typeof correctionShape>;

const sentShape = z.strictObject({
  id: z.string(),
  kind: z.enum(DRAFT_KINDS),
  coachName: z.string(),
  note: z.string(),
  sentAtMs: z.number(),
  keeps: z.array(draftKeepSchema),
  addenda: z.array(
    z.strictObject({ id: z.string(), coachName: z.string(), text: z.string(), atMs: z.number() }),
  ),
});
/** A review or check as it was sent. */
export type SentView = z.output<typeof sentShape>;

const roundShape = z.strictObject({
  id: z.string(),
  state: z.enum(ROUND_STATES),
  receivedAtMs: z.number(),
  dueAtMs: z.number().nullable(),
  sentAtMs: z.number().nullable(),
  replyFrom: z.string().nullable(),
  lapsesOn: z.string().nullable(),
  answeredAtMs: z.number().nullable(),
  settledAtMs: z.number().nullable(),
  retakeReason: z.string(),
});
/** A round as a screen tells it. */
export type RoundView = z.output<typeof roundShape>;

/** How far the demo's clips are drawn. */
const drawingShape = z.strictObject({ ready: z.int(), drawing: z.int() });

const kept = <Document extends z.ZodType>(document: Document) =>
  z.strictObject({ document, version: z.number(), coachName: z.string(), savedAtMs: z.number() }).nullable();

/** A measure of a sent review or check. */
export const measurementShape = z.strictObject({
  id: z.string(),
  kind: z.enum(MEASURE_KINDS),
  checkpointId: z.string().nullable(),
  clipId: z.string(),
  frame: z.number(),
  untilFrame: z.number().nullable(),
  points: z.array(measuredPointSchema),
  view: z.enum(CAMERA_VIEWS),
  /** Degrees, hundredths of a length, or milliseconds, by its kind. */
  value: z.number(),
});
/** A measure of a sent review or check. */
export type MeasurementView = z.output<typeof measurementShape>;

const errorFigure = z
  .strictObject({
    withinSd: z.number(),
    plusMinus: z.number(),
    degreesOfFreedom: z.number(),
    isEnough: z.boolean(),
  })
  .nullable();

/** The error of a kind of measure from one view, from the academy's own repeats. */
export const measureErrorShape = z.strictObject({
  kind: z.enum(MEASURE_KINDS),
  view: z.enum(CAMERA_VIEWS),
  sameFrame: errorFigure,
  sameDay: errorFigure,
});

/** What reviews that are sent have measured and drawn on the clips, and how sure measures are. */
const measuredOnClips = {
  measurements: z.array(measurementShape),
  marks: z.array(draftMarkSchema),
  measureErrors: z.array(measureErrorShape),
};

/** What staff see of a round in the review room. */
export const roomShape = z.strictObject({
  round: roundShape,
  zone: z.string(),
  today: z.string(),
  athlete: athleteHead,
  coachName: z.string().nullable(),
  isMine: z.boolean(),
  isCoach: z.boolean(),
  maxOpen: z.number(),
  clips: z.array(clipShape),
  drawing: drawingShape,
  checkpoints: z.array(checkpointSchema),
  /** The latest judgement of each checkpoint, on whichever clip or in person. */
  latestJudgements: z.array(
    z.strictObject({ checkpointId: z.string(), score: judgementScore, judgedOn: z.string() }),
  ),
  corrections: z.array(correctionShape),
  /** What the academy usually says at the athlete's age, the narrowest age group first. */
  templates: z.array(templateShape),
  eventMarks: z.array(eventMarkSchema),
  ...measuredOnClips,
  /** How this round's sent review judged its clips. */
  judgements: z.array(draftJudgementSchema),
  reviewDraft: kept(reviewDraftSchema),
  checkDraft: kept(checkDraftSchema),
  sent: z.array(sentShape),
});
/** What staff see of a round in the review room. */
export type RoomView = z.output<typeof roomShape>;

/** What the family reads of a round. */
export const readingShape = z.strictObject({
  round: roundShape,
  zone: z.string(),
  today: z.string(),
  athlete: z.strictObject({ athleteId: z.string(), givenName: z.string() }),
  coachName: z.string().nullable(),
  clips: z.array(clipShape),
  drawing: drawingShape,
  corrections: z.array(correctionShape),
  eventMarks: z.array(eventMarkSchema),
  ...measuredOnClips,
  sent: z.array(sentShape),
  /** Of the spoken notes those that are still kept. */
  voicesToHear: z.array(z.string()),
  reply: z.strictObject({ isWanted: z.boolean(), isOpen: z.boolean(), words: z.string() }),
});
/** What the family reads of a round. */
export type ReadingView = z.output<typeof readingShape>;

/** The rounds of one athlete, the latest first. */
export const roundListShape = z.strictObject({
  zone: z.string(),
  rounds: z.array(
    z.strictObject({
      id: z.string(),
      state: z.enum(ROUND_STATES),
      receivedAtMs: z.number(),
      sentAtMs: z.number().nullable(),
      settledAtMs: z.number().nullable(),
      coachName: z.string().nullable(),
      givenCount: z.number(),
      openCount: z.number(),
    }),
  ),
});
/** The rounds of one athlete. */
export type RoundListView = z.output<typeof roundListShape>;
