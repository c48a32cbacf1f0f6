import { z } from "zod";
import { CAMERA_VIEWS } from "@/server/domain/mechanics/delivery";
import { MEASURE_KINDS } from "@/server/domain/mechanics/measure-kind";
import { clipShape, measureErrorShape } from "../reviews/shapes";

const measured = {
  kind: z.enum(MEASURE_KINDS),
  view: z.enum(CAMERA_VIEWS),
  frame: z.number(),
  athleteName: z.string(),
};

/** What waits to be measured a second time, what could be, and how sure measures are. No value is in it. */
export const againShape = z.strictObject({
  /** Only a coach measures. */
  isCoach: z.boolean(),
  waiting: z.array(
    z.strictObject({
      ...measured,
      requestId: z.string(),
      isForMe: z.boolean(),
      /** The coach it is asked of; null for whoever comes first. */
      askedOf: z.string().nullable(),
      mayWithdraw: z.boolean(),
    }),
  ),
  latest: z.array(
    z.strictObject({
      ...measured,
      id: z.string(),
      measuredOn: z.string(),
      coachName: z.string(),
      /** How often it was measured again. */
      timesAgain: z.number(),
      isAsked: z.boolean(),
    }),
  ),
  coaches: z.array(z.strictObject({ personId: z.string(), name: z.string() })),
  measureErrors: z.array(measureErrorShape),
});
/** What waits to be measured a second time. */
export type AgainView = z.output<typeof againShape>;

/** The frames the points of a measure lie on, so that all measures are of the same pictures. */
export const framesShape = z.strictObject({
  here: z.number(),
  standing: z.number().optional(),
  before: z.number().optional(),
});

/** A frame as it was measured, without its points and without what they were worth. */
export const blindShape = z.strictObject({
  requestId: z.string(),
  ...measured,
  clip: clipShape,
  drawing: z.strictObject({ ready: z.int(), drawing: z.int() }),
  frames: framesShape,
});
/** A frame that is measured a second time. */
export type BlindView = z.output<typeof blindShape>;

/** Both values, once the second is there. */
export const answeredShape = z.strictObject({
  kind: z.enum(MEASURE_KINDS),
  first: z.number(),
  again: z.number(),
});
