import { z } from "zod";
import { BLIND_FRAMES } from "@/server/domain/mechanics/blind-draw";
import { BLIND_WAYS } from "@/server/domain/mechanics/blind-pool";
import { CAMERA_VIEWS, DELIVERY_EVENTS } from "@/server/domain/mechanics/delivery";
import { judgementScore } from "@/server/domain/mechanics/judgement";
import { SERIES_KINDS } from "@/server/domain/mechanics/observation";
import { placedInput } from "../measurements/points-input";
import { framesShape } from "../measurements/shapes";
import { clipShape, idInput } from "../reviews/shapes";

/** A set to be drawn. */
export const drawInput = z.strictObject({
  name: z.string().trim().min(1, "Give the set a name.").max(60, "At most 60 characters."),
  way: z.enum(BLIND_WAYS),
  view: z.enum(CAMERA_VIEWS),
  checkpointIds: z.array(idInput).min(1, "Choose a checkpoint.").max(40),
  frames: z.int().min(BLIND_FRAMES.min).max(BLIND_FRAMES.max),
});
/** A set to be drawn. */
export type DrawInput = z.output<typeof drawInput>;

/** What a coach says of one frame: a judgement, points, or that it could not be seen. */
export const rateInput = z.strictObject({
  itemId: idInput,
  answer: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("judged"), score: judgementScore }),
    z.strictObject({ kind: z.literal("placed"), ...placedInput }),
    z.strictObject({ kind: z.literal("unseen") }),
  ]),
});
/** What a coach says of one frame. */
export type RateInput = z.output<typeof rateInput>;

const coach = { personId: z.string(), name: z.string() };
const set = {
  id: z.string(),
  name: z.string(),
  way: z.enum(BLIND_WAYS),
  madeAtMs: z.number(),
  closedAtMs: z.number().nullable(),
  items: z.number(),
};

/** The sets there are. Of an open one it is told how far each coach is, and nothing of what anybody said. */
export const setsShape = z.strictObject({
  isAdmin: z.boolean(),
  isCoach: z.boolean(),
  sets: z.array(
    z.strictObject({
      ...set,
      /** Coaches who rated every frame, and those who rated any. */
      finished: z.number(),
      begun: z.number(),
      /** How many frames the caller has rated. */
      rated: z.number(),
    }),
  ),
});
/** The sets there are. */
export type SetsView = z.output<typeof setsShape>;

/** How many frames there are to draw from. */
export const poolShape = z.strictObject({
  checkpoints: z.array(z.strictObject({ id: z.string(), name: z.string() })),
  counts: z.array(
    z.strictObject({
      way: z.enum(BLIND_WAYS),
      checkpointId: z.string(),
      view: z.enum(CAMERA_VIEWS),
      frames: z.number(),
    }),
  ),
});
/** How many frames there are to draw from. */
export type PoolView = z.output<typeof poolShape>;

/** A clip as it is shown blind: nothing that says whose it is, of which day, or what was said of it. */
const blindClipShape = clipShape.pick({
  id: true,
  state: true,
  view: true,
  widthPx: true,
  heightPx: true,
  hasPoster: true,
  codec: true,
  conversion: true,
  conversionShare: true,
  capturedFps: true,
  frameCount: true,
  frameTimesMs: true,
});

/** The frame that a coach rates next, or null when none is left for them. */
export const nextShape = z.strictObject({
  set: z.strictObject({ id: z.string(), name: z.string(), isClosed: z.boolean() }),
  of: z.number(),
  rated: z.number(),
  /** Frames not rated whose film is gone or whose consent was withdrawn. */
  gone: z.number(),
  drawing: z.strictObject({ ready: z.int(), drawing: z.int() }),
  item: z
    .strictObject({
      id: z.string(),
      position: z.number(),
      kind: z.enum(SERIES_KINDS),
      view: z.enum(CAMERA_VIEWS),
      frames: framesShape,
      checkpoint: z.strictObject({
        name: z.string(),
        event: z.enum(DELIVERY_EVENTS),
        absentLooksLike: z.string(),
        clearLooksLike: z.string(),
      }),
      clip: blindClipShape,
    })
    .nullable(),
});
/** The frame that a coach rates next. */
export type NextView = z.output<typeof nextShape>;
/** One frame as it is rated. */
export type RatedFrame = NonNullable<NextView["item"]>;

const offset = z.strictObject({ coachId: z.string(), offset: z.number() });
const figure = {
  coaches: z.array(z.string()),
  items: z.number(),
  figure: z.number().nullable(),
  lower: z.number().nullable(),
  upper: z.number().nullable(),
  words: z.string(),
};

const kindResults = z.strictObject({
  kind: z.enum(SERIES_KINDS),
  items: z.number(),
  coaches: z.array(z.string()),
  unseen: z.number(),
  /** Why there is no figure at all, in the fixed words. */
  tooFew: z.string().nullable(),
  /** ICC(2,1) of all coaches; null for judgements. */
  measures: z
    .strictObject({ ...figure, standardError: z.number().nullable(), leftOut: z.number() })
    .nullable(),
  /** Weighted kappa of each pair; null for a measure. */
  pairs: z.array(z.strictObject(figure)).nullable(),
  byCoach: z.array(offset),
  byCheckpoint: z.array(
    z.strictObject({
      checkpointId: z.string(),
      items: z.number(),
      apart: z.number(),
      byCoach: z.array(offset),
    }),
  ),
  itemsApart: z.array(
    z.strictObject({
      itemId: z.string(),
      checkpointId: z.string(),
      apart: z.number(),
      said: z.array(z.strictObject({ coachId: z.string(), value: z.number().nullable() })),
      position: z.number(),
      frame: z.number(),
      view: z.enum(CAMERA_VIEWS),
      /** Where it can be looked at; null once the film is gone. */
      at: z.strictObject({ roundId: z.string(), clipId: z.string() }).nullable(),
    }),
  ),
});
/** What a closed set says of one kind. */
export type KindView = z.output<typeof kindResults>;

/** One set: while it is open who is how far, once it is closed how far the coaches agree. */
export const setShape = z.strictObject({
  ...set,
  isAdmin: z.boolean(),
  isCoach: z.boolean(),
  madeByName: z.string(),
  /** Everybody who coaches now or has rated, with how many frames they have rated. */
  progress: z.array(z.strictObject({ ...coach, rated: z.number() })),
  checkpoints: z.array(z.strictObject({ id: z.string(), name: z.string() })),
  /** Null while it is open. */
  results: z
    .strictObject({
      kinds: z.array(kindResults),
      uncounted: z.array(z.strictObject({ coachId: z.string(), rated: z.number() })),
    })
    .nullable(),
});
/** One set. */
export type SetView = z.output<typeof setShape>;
