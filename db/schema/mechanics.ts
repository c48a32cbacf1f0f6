import { sql } from "drizzle-orm";
import { index, integer, real, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { CAMERA_VIEWS, DELIVERY_EVENTS } from "../../server/domain/mechanics/delivery";
import { MARK_GUIDES } from "../../server/domain/mechanics/mark-guide";
import { MEASURE_KINDS } from "../../server/domain/mechanics/measure-kind";
import { SERIES_KINDS } from "../../server/domain/mechanics/observation";
import { checkpoint } from "./checkpoints";
import { day, holds, instant, oneOf, within } from "./columns";
import { athlete, remark } from "./people";
import { review } from "./reviews";

/** Append-only: the frame of a delivery event on a clip, as a sent review marked it. */
export const eventMark = sqliteTable(
  "event_mark",
  {
    id: text("id").primaryKey(),
    reviewId: text("review_id")
      .notNull()
      .references(() => review.id),
    clipId: text("clip_id").notNull(),
    event: text("event", { enum: DELIVERY_EVENTS }).notNull(),
    frame: integer("frame").notNull(),
  },
  (table) => [
    uniqueIndex("event_mark_once").on(table.reviewId, table.clipId, table.event),
    index("event_mark_by_clip").on(table.clipId),
    oneOf("event_mark_event", table.event, DELIVERY_EVENTS),
    within("event_mark_frame", table.frame, 0, 1_000_000),
  ],
);

/** Append-only: a checkpoint judged on a clip, or in person (no clip). */
export const judgement = sqliteTable(
  "judgement",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    checkpointId: text("checkpoint_id")
      .notNull()
      .references(() => checkpoint.id),
    reviewId: text("review_id").references(() => review.id),
    sessionId: text("session_id"),
    clipId: text("clip_id"),
    frame: integer("frame"),
    view: text("view", { enum: CAMERA_VIEWS }),
    score: integer("score").notNull(),
    coachPersonId: text("coach_person_id").notNull(),
    judgedOn: day("judged_on").notNull(),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [
    /* The season page draws one series an athlete and checkpoint. */
    index("judgement_by_athlete").on(table.athleteId, table.checkpointId, table.atMs),
    within("judgement_score", table.score, 0, 3),
  ],
);

/** Append-only: a measure as it was taken. `value` is in the unit of its kind; `points` a JSON array. */
export const measurement = sqliteTable(
  "measurement",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    checkpointId: text("checkpoint_id").references(() => checkpoint.id),
    /** The review it was sent with; null for one that was taken again, blind. */
    reviewId: text("review_id").references(() => review.id),
    /** The measurement whose frame was measured again. */
    repeatOfId: text("repeat_of_id"),
    clipId: text("clip_id").notNull(),
    frame: integer("frame").notNull(),
    untilFrame: integer("until_frame"),
    view: text("view", { enum: CAMERA_VIEWS }).notNull(),
    pitchType: text("pitch_type"),
    kind: text("kind", { enum: MEASURE_KINDS }).notNull(),
    points: text("points").notNull(),
    value: real("value").notNull(),
    coachPersonId: text("coach_person_id").notNull(),
    measuredOn: day("measured_on").notNull(),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [
    index("measurement_by_athlete").on(table.athleteId, table.kind, table.atMs),
    /* The error figures read the academy's repeats of a kind. */
    index("measurement_by_kind").on(table.kind, table.view),
    index("measurement_by_clip").on(table.clipId),
    index("measurement_by_repeat").on(table.repeatOfId),
    oneOf("measurement_kind", table.kind, MEASURE_KINDS),
    oneOf("measurement_view", table.view, CAMERA_VIEWS),
    holds("measurement_points_json", sql`json_valid(${table.points})`),
  ],
);

/** A frame that is to be measured a second time without its points in sight; by anybody, or by one coach. */
export const remeasureRequest = sqliteTable(
  "remeasure_request",
  {
    id: text("id").primaryKey(),
    measurementId: text("measurement_id")
      .notNull()
      .references(() => measurement.id),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    askedByPersonId: text("asked_by_person_id").notNull(),
    forPersonId: text("for_person_id"),
    askedAtMs: instant("asked_at_ms").notNull(),
    doneAtMs: instant("done_at_ms"),
    doneMeasurementId: text("done_measurement_id"),
  },
  (table) => [index("remeasure_request_open").on(table.doneAtMs, table.askedAtMs)],
);

/** Append-only: a mark that shows what a checkpoint means, as it was sent. `points` is a JSON array of places. */
export const drawnMark = sqliteTable(
  "drawn_mark",
  {
    id: text("id").primaryKey(),
    reviewId: text("review_id")
      .notNull()
      .references(() => review.id),
    checkpointId: text("checkpoint_id").references(() => checkpoint.id),
    clipId: text("clip_id").notNull(),
    frame: integer("frame").notNull(),
    untilFrame: integer("until_frame"),
    guide: text("guide", { enum: MARK_GUIDES }).notNull(),
    points: text("points").notNull(),
    remarkId: text("remark_id").references(() => remark.id),
    position: integer("position").notNull(),
  },
  (table) => [
    index("drawn_mark_by_review").on(table.reviewId),
    index("drawn_mark_by_clip").on(table.clipId),
    oneOf("drawn_mark_guide", table.guide, MARK_GUIDES),
    holds("drawn_mark_points_json", sql`json_valid(${table.points})`),
  ],
);

/** Frames that several coaches judge or measure alone, to see how far they agree. */
export const blindSet = sqliteTable("blind_set", {
  id: text("id").primaryKey(),
  name: text("name").notNull(),
  madeByPersonId: text("made_by_person_id").notNull(),
  madeAtMs: instant("made_at_ms").notNull(),
  /** From then on nobody rates and everybody sees; null while it is open. */
  closedAtMs: instant("closed_at_ms"),
});

/** One frame of a blind set, at one checkpoint: to be judged, or measured. */
export const blindItem = sqliteTable(
  "blind_item",
  {
    id: text("id").primaryKey(),
    setId: text("set_id")
      .notNull()
      .references(() => blindSet.id),
    position: integer("position").notNull(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    checkpointId: text("checkpoint_id")
      .notNull()
      .references(() => checkpoint.id),
    clipId: text("clip_id").notNull(),
    frame: integer("frame").notNull(),
    view: text("view", { enum: CAMERA_VIEWS }).notNull(),
    kind: text("kind", { enum: SERIES_KINDS }).notNull(),
  },
  (table) => [
    uniqueIndex("blind_item_place").on(table.setId, table.position),
    index("blind_item_by_athlete").on(table.athleteId),
    oneOf("blind_item_view", table.view, CAMERA_VIEWS),
    oneOf("blind_item_kind", table.kind, SERIES_KINDS),
    within("blind_item_frame", table.frame, 0, 1_000_000),
  ],
);

/** Append-only: what one coach said of one item; null when it could not be seen. `points` a JSON array. */
export const blindRating = sqliteTable(
  "blind_rating",
  {
    id: text("id").primaryKey(),
    itemId: text("item_id")
      .notNull()
      .references(() => blindItem.id),
    coachPersonId: text("coach_person_id").notNull(),
    value: real("value"),
    points: text("points").notNull(),
    ratedAtMs: instant("rated_at_ms").notNull(),
  },
  (table) => [
    /* The second look is not blind to the first. */
    uniqueIndex("blind_rating_once").on(table.itemId, table.coachPersonId),
    holds("blind_rating_points_json", sql`json_valid(${table.points})`),
  ],
);
