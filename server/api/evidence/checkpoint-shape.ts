import { z } from "zod";
import { CAMERA_VIEWS, DELIVERY_EVENTS, DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { SERIES_KINDS } from "@/server/domain/mechanics/observation";
import { CORRECTION_STATES } from "@/server/domain/reviews/correction-state";
import { athleteHead } from "../athlete-head";
import { clipShape } from "../reviews/shapes";

const day = z.string();

/** Where the frame of an observation can be looked at; `isKept` false once its film was deleted. */
const place = z.strictObject({
  roundId: z.string(),
  clipId: z.string(),
  frame: z.int().nullable(),
  isKept: z.boolean(),
});

const observed = z.strictObject({
  id: z.string(),
  day,
  value: z.number(),
  words: z.string(),
  coachName: z.string(),
  pitchType: z.string().nullable(),
  isRepeat: z.boolean(),
  /** Null for what was seen in person. */
  place: place.nullable(),
});

const series = z.strictObject({
  kind: z.enum(SERIES_KINDS),
  view: z.enum(CAMERA_VIEWS).nullable(),
  days: z.array(
    z.strictObject({
      day,
      value: z.number(),
      least: z.number(),
      greatest: z.number(),
      deliveries: z.int(),
      words: z.string(),
      place: place.nullable(),
    }),
  ),
  /** Earliest first. */
  observations: z.array(observed),
  unseen: z.int(),
  /** 95 of 100 deliveries lie within this of the athlete's usual; null while too little is known of it. */
  plusMinus: z.number().nullable(),
  errorWords: z.string(),
  wantedWords: z.string(),
  trendWords: z.string(),
  shiftWords: z.string(),
  since: z.array(
    z.strictObject({ correctionId: z.string(), words: z.array(z.string()), fellAway: z.boolean() }),
  ),
  /** What was published of this measure at this moment. */
  published: z.array(z.strictObject({ words: z.string(), mean: z.number(), sd: z.number() })),
  /** The first, a middle and the latest frame whose film is there. */
  frames: z.array(
    z.strictObject({
      which: z.enum(["first", "middle", "latest"]),
      day,
      words: z.string(),
      frame: z.int(),
      roundId: z.string(),
      clip: clipShape,
    }),
  ),
});

/** Everything that is on record of one athlete at one checkpoint, and what it carries. */
export const checkpointEvidence = z.strictObject({
  athlete: athleteHead,
  today: day,
  checkpoint: z.strictObject({
    id: z.string(),
    name: z.string(),
    phase: z.enum(DELIVERY_PHASES),
    event: z.enum(DELIVERY_EVENTS),
    absentLooksLike: z.string(),
    clearLooksLike: z.string(),
  }),
  /** In the order given. */
  corrections: z.array(
    z.strictObject({
      id: z.string(),
      roundId: z.string(),
      cue: z.string(),
      state: z.enum(CORRECTION_STATES),
      cameBack: z.boolean(),
      givenOn: day,
      spans: z.array(
        z.strictObject({ state: z.enum(CORRECTION_STATES), fromDay: day, toDay: day.nullable() }),
      ),
    }),
  ),
  /** Those with most days first. */
  series: z.array(series),
  /** How many checkpoints of the athlete were looked at together, in sentences. */
  manyWords: z.array(z.string()),
});

/** The value of {@link checkpointEvidence}. */
export type CheckpointEvidence = z.output<typeof checkpointEvidence>;
