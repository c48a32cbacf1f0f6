import { index, integer, primaryKey, real, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { DELIVERY_PHASES } from "../../server/domain/mechanics/delivery";
import { WANTED_WAYS } from "../../server/domain/mechanics/wanted-direction";
import { CORRECTION_EVENT_KINDS, CORRECTION_STATES } from "../../server/domain/reviews/correction-state";
import { checkpoint } from "./checkpoints";
import { day, flag, instant, oneOf } from "./columns";
import { athlete, remark } from "./people";
import { review } from "./reviews";
import { round } from "./rounds";

/** A correction; its state is the fold of its events, kept here for reading. */
export const correction = sqliteTable(
  "correction",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    reviewId: text("review_id")
      .notNull()
      .references(() => review.id),
    roundId: text("round_id")
      .notNull()
      .references(() => round.id),
    checkpointId: text("checkpoint_id")
      .notNull()
      .references(() => checkpoint.id),
    phase: text("phase", { enum: DELIVERY_PHASES }).notNull(),
    cue: text("cue").notNull(),
    drill: text("drill").notNull(),
    clipId: text("clip_id"),
    frame: integer("frame"),
    position: integer("position").notNull(),
    voiceId: text("voice_id"),
    /** Which way it asks the checkpoint's measure to go; null where it does not say. `wantedTo` with nearer alone. */
    wanted: text("wanted", { enum: WANTED_WAYS }),
    wantedTo: real("wanted_to"),
    state: text("state", { enum: CORRECTION_STATES }).notNull(),
    cameBack: flag("came_back").notNull().default(false),
    givenAtMs: instant("given_at_ms").notNull(),
    closedAtMs: instant("closed_at_ms"),
  },
  (table) => [
    /* Open corrections beside the queue, the slip and the family's first screen. */
    index("correction_by_athlete").on(table.athleteId, table.state),
    index("correction_by_review").on(table.reviewId),
    oneOf("correction_state", table.state, CORRECTION_STATES),
    oneOf("correction_phase", table.phase, DELIVERY_PHASES),
  ],
);

/** Append-only: given, each verdict, confirmed in person, retired. */
export const correctionEvent = sqliteTable(
  "correction_event",
  {
    id: text("id").primaryKey(),
    correctionId: text("correction_id")
      .notNull()
      .references(() => correction.id),
    kind: text("kind", { enum: CORRECTION_EVENT_KINDS }).notNull(),
    roundId: text("round_id"),
    sessionId: text("session_id"),
    clipId: text("clip_id"),
    frame: integer("frame"),
    remarkId: text("remark_id").references(() => remark.id),
    actorPersonId: text("actor_person_id").notNull(),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [
    index("correction_event_by_correction").on(table.correctionId, table.atMs),
    oneOf("correction_event_kind", table.kind, CORRECTION_EVENT_KINDS),
  ],
);

/** A day on which the athlete practised a correction's drill; may be unticked. */
export const practiceDay = sqliteTable(
  "practice_day",
  {
    correctionId: text("correction_id")
      .notNull()
      .references(() => correction.id),
    practisedOn: day("practised_on").notNull(),
    tickedByPersonId: text("ticked_by_person_id").notNull(),
  },
  (table) => [primaryKey({ columns: [table.correctionId, table.practisedOn] })],
);
