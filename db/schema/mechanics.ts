import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { CAMERA_VIEWS, DELIVERY_EVENTS } from "../../server/domain/mechanics/delivery";
import { checkpoint } from "./checkpoints";
import { day, instant, oneOf, within } from "./columns";
import { athlete } from "./people";
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
