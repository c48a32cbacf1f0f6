import { sql } from "drizzle-orm";
import { index, integer, primaryKey, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { DRAFT_KINDS } from "../../server/domain/reviews/draft";
import { ROUND_EVENT_KINDS, ROUND_STATES } from "../../server/domain/reviews/round-state";
import { day, holds, instant, oneOf } from "./columns";
import { athlete, person, remark } from "./people";
import { site } from "./sites";

/** One exchange: a clip in, corrections out, a clip back, a check. */
export const round = sqliteTable(
  "round",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    siteId: text("site_id")
      .notNull()
      .references(() => site.id),
    state: text("state", { enum: ROUND_STATES }).notNull(),
    coachPersonId: text("coach_person_id").references(() => person.id),
    receivedAtMs: instant("received_at_ms").notNull(),
    takenAtMs: instant("taken_at_ms"),
    /** When the academy owes the next step; null while the family's turn or while the clock is paused. */
    dueAtMs: instant("due_at_ms"),
    /** Open time left on the paused promise, in milliseconds; set only in `retake`. */
    pausedOpenMs: integer("paused_open_ms"),
    /** The state to go back to when the new clip comes. */
    retakeFrom: text("retake_from", { enum: ROUND_STATES }),
    retakeRemarkId: text("retake_remark_id").references(() => remark.id),
    sentAtMs: instant("sent_at_ms"),
    /** The first day a reply is asked for: not before the arm's first free day. */
    replyFrom: day("reply_from"),
    lapsesOn: day("lapses_on"),
    answeredAtMs: instant("answered_at_ms"),
    settledAtMs: instant("settled_at_ms"),
    version: integer("version").notNull().default(1),
  },
  (table) => [
    /* The queue: what is owed, by when. */
    index("round_by_due").on(table.state, table.dueAtMs),
    /* The athlete's season and the family's first screen. */
    index("round_by_athlete").on(table.athleteId, table.receivedAtMs),
    oneOf("round_state", table.state, ROUND_STATES),
    holds(
      "round_paused_only_in_retake",
      sql`(${table.state} = 'retake') = (${table.pausedOpenMs} IS NOT NULL)`,
    ),
  ],
);

/** Append-only: what happened to a round. */
export const roundEvent = sqliteTable(
  "round_event",
  {
    id: text("id").primaryKey(),
    roundId: text("round_id")
      .notNull()
      .references(() => round.id),
    kind: text("kind", { enum: ROUND_EVENT_KINDS }).notNull(),
    actorPersonId: text("actor_person_id"),
    /** Whom it was handed to, when it was. */
    toPersonId: text("to_person_id"),
    remarkId: text("remark_id").references(() => remark.id),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [
    index("round_event_by_round").on(table.roundId, table.atMs),
    oneOf("round_event_kind", table.kind, ROUND_EVENT_KINDS),
  ],
);

/** What a coach is writing: one document a round and kind, saved with every change. */
export const draft = sqliteTable(
  "draft",
  {
    roundId: text("round_id")
      .notNull()
      .references(() => round.id),
    kind: text("kind", { enum: DRAFT_KINDS }).notNull(),
    coachPersonId: text("coach_person_id")
      .notNull()
      .references(() => person.id),
    document: text("document").notNull(),
    version: integer("version").notNull(),
    openedAtMs: instant("opened_at_ms").notNull(),
    savedAtMs: instant("saved_at_ms").notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.roundId, table.kind] }),
    oneOf("draft_kind", table.kind, DRAFT_KINDS),
    holds("draft_document_json", sql`json_valid(${table.document})`),
  ],
);
