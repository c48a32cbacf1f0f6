import { sql } from "drizzle-orm";
import { index, integer, real, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { DELIVERY_PHASES } from "../../server/domain/mechanics/delivery";
import { DRAFT_KINDS } from "../../server/domain/reviews/draft";
import { VOICE_STATES } from "../../server/domain/reviews/voice-note";
import { checkpoint } from "./checkpoints";
import { flag, holds, instant, oneOf, within } from "./columns";
import { athlete, person, remark } from "./people";
import { round } from "./rounds";

/** Append-only: a review (`review`) or a check (`check`) as it was sent. */
export const review = sqliteTable(
  "review",
  {
    id: text("id").primaryKey(),
    roundId: text("round_id")
      .notNull()
      .references(() => round.id),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    kind: text("kind", { enum: DRAFT_KINDS }).notNull(),
    coachPersonId: text("coach_person_id")
      .notNull()
      .references(() => person.id),
    remarkId: text("remark_id").references(() => remark.id),
    openedAtMs: instant("opened_at_ms").notNull(),
    sentAtMs: instant("sent_at_ms").notNull(),
  },
  (table) => [
    uniqueIndex("review_once_a_round").on(table.roundId, table.kind),
    /* The month's export asks for what was sent in it. */
    index("review_by_sent").on(table.sentAtMs),
    oneOf("review_kind", table.kind, DRAFT_KINDS),
  ],
);

/** Append-only: a later word on a sent review. */
export const addendum = sqliteTable(
  "addendum",
  {
    id: text("id").primaryKey(),
    reviewId: text("review_id")
      .notNull()
      .references(() => review.id),
    coachPersonId: text("coach_person_id").notNull(),
    remarkId: text("remark_id")
      .notNull()
      .references(() => remark.id),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [index("addendum_by_review").on(table.reviewId)],
);

/** A strength named beside the corrections. */
export const keep = sqliteTable(
  "keep",
  {
    id: text("id").primaryKey(),
    reviewId: text("review_id")
      .notNull()
      .references(() => review.id),
    checkpointId: text("checkpoint_id").references(() => checkpoint.id),
    phase: text("phase", { enum: DELIVERY_PHASES }).notNull(),
    text: text("text").notNull(),
    clipId: text("clip_id"),
    frame: integer("frame"),
    position: integer("position").notNull(),
    voiceId: text("voice_id"),
  },
  (table) => [index("keep_by_review").on(table.reviewId), oneOf("keep_phase", table.phase, DELIVERY_PHASES)],
);

/**
 * A spoken note on a keep or a correction. `waiting` belongs to a draft; `sent` is with the family; `gone` was left out
 * or is past its day, and its sound is deleted.
 */
export const voiceNote = sqliteTable(
  "voice_note",
  {
    id: text("id").primaryKey(),
    roundId: text("round_id")
      .notNull()
      .references(() => round.id),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    coachPersonId: text("coach_person_id")
      .notNull()
      .references(() => person.id),
    state: text("state", { enum: VOICE_STATES }).notNull(),
    storageName: text("storage_name").notNull(),
    contentType: text("content_type").notNull(),
    byteCount: integer("byte_count").notNull(),
    sha256: text("sha256").notNull(),
    durationMs: real("duration_ms").notNull(),
    createdAtMs: instant("created_at_ms").notNull(),
  },
  (table) => [
    index("voice_note_by_round").on(table.roundId),
    index("voice_note_by_state").on(table.state, table.createdAtMs),
    oneOf("voice_note_state", table.state, VOICE_STATES),
  ],
);

/** What an academy usually says in a review of an age group. `lines` is a JSON array, see the domain. */
export const reviewTemplate = sqliteTable(
  "review_template",
  {
    id: text("id").primaryKey(),
    name: text("name").notNull(),
    fromAge: integer("from_age").notNull(),
    toAge: integer("to_age").notNull(),
    lines: text("lines").notNull(),
    active: flag("active").notNull().default(true),
    version: integer("version").notNull().default(1),
  },
  (table) => [
    within("review_template_from_age", table.fromAge, 4, 99),
    within("review_template_to_age", table.toAge, 4, 99),
    holds("review_template_lines_json", sql`json_valid(${table.lines})`),
  ],
);
