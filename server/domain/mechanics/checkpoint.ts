import { z } from "zod";
import {
  CAMERA_VIEWS,
  type CameraView,
  DELIVERY_EVENTS,
  DELIVERY_PHASES,
  eventOrder,
  phaseOrder,
} from "./delivery";
import { MARK_GUIDES } from "./mark-guide";
import { MEASURE_KINDS } from "./measure-kind";
import { statedDirectionSchema } from "./wanted-direction";

const words = (longest: number) =>
  z.string().trim().min(1, "Enter a few words.").max(longest, `At most ${longest} characters.`);

/**
 * One thing to look at in one phase, at the frame of one event. Lengths in characters; all limits of length and number
 * are common practice, no source. An id never changes once a judgement names it.
 */
export const checkpointSchema = z.strictObject({
  id: z
    .string()
    .max(60)
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "An id is lower-case words joined by hyphens."),
  phase: z.enum(DELIVERY_PHASES),
  /** The moment whose frame it is judged on. */
  event: z.enum(DELIVERY_EVENTS),
  name: words(60),
  /** What a judgement of 0 looks like. */
  absentLooksLike: words(200),
  /** What a judgement of 3 looks like. */
  clearLooksLike: words(200),
  /** The camera views from which it can be judged, each once. */
  views: z
    .array(z.enum(CAMERA_VIEWS))
    .min(1, "Choose a camera view.")
    .max(CAMERA_VIEWS.length)
    .refine((views) => new Set(views).size === views.length, "Name each camera view once."),
  cues: z.array(words(160)).max(6, "Enter at most 6 cues."),
  drills: z.array(words(160)).max(6, "Enter at most 6 drills."),
  /** A published work, or "common practice". */
  source: words(200),
  /** What can be measured for it, or null. */
  measure: z.enum(MEASURE_KINDS).nullable(),
  /** The guide that shows best what it means, or null for the pencil. */
  guide: z.enum(MARK_GUIDES).nullable(),
  /** Which way its measure is better; null where the academy does not say. */
  wanted: statedDirectionSchema.nullable(),
  /** False when the academy no longer offers it; what was judged by it stays readable. */
  active: z.boolean(),
});

/** One thing to look at in a delivery. See {@link checkpointSchema}. */
export type Checkpoint = z.infer<typeof checkpointSchema>;

/** Orders checkpoints as a delivery runs: by phase, then by event. Equal ones keep the order they came in. */
export function inDeliveryOrder(
  a: Pick<Checkpoint, "phase" | "event">,
  b: Pick<Checkpoint, "phase" | "event">,
): number {
  return phaseOrder(a.phase) - phaseOrder(b.phase) || eventOrder(a.event) - eventOrder(b.event);
}

/** Whether a checkpoint can be judged on a clip filmed from this view. */
export function canBeJudgedFrom(checkpoint: Pick<Checkpoint, "views">, view: CameraView): boolean {
  return checkpoint.views.includes(view);
}
