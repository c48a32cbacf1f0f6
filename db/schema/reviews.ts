import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { DELIVERY_PHASES } from "../../server/domain/mechanics/delivery";
import { DRAFT_KINDS } from "../../server/domain/reviews/draft";
import { checkpoint } from "./checkpoints";
import { instant, oneOf } from "./columns";
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
  },
  (table) => [index("keep_by_review").on(table.reviewId), oneOf("keep_phase", table.phase, DELIVERY_PHASES)],
);
