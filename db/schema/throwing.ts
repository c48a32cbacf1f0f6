import { sql } from "drizzle-orm";
import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { PAIN_KINDS } from "../../server/domain/throwing/pain";
import { THROW_KINDS } from "../../server/domain/throwing/throw-entry";
import { day, flag, holds, instant, isDay, oneOf, within } from "./columns";
import { athlete, remark } from "./people";

/** Append-only: throws of one day. A correction is a new row that names the one it replaces. */
export const throwEntry = sqliteTable(
  "throw_entry",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    thrownOn: day("thrown_on").notNull(),
    kind: text("kind", { enum: THROW_KINDS }).notNull(),
    pitches: integer("pitches").notNull(),
    sessionId: text("session_id"),
    clipId: text("clip_id"),
    replacesId: text("replaces_id"),
    reportedByPersonId: text("reported_by_person_id").notNull(),
    reportedAtMs: instant("reported_at_ms").notNull(),
    remarkId: text("remark_id").references(() => remark.id),
  },
  (table) => [
    /* Every limit check reads an athlete's recent days. */
    index("throw_entry_by_athlete").on(table.athleteId, table.thrownOn),
    uniqueIndex("throw_entry_replaced_once").on(table.replacesId),
    oneOf("throw_entry_kind", table.kind, THROW_KINDS),
    within("throw_entry_pitches", table.pitches, 0, 400),
    isDay("throw_entry_day", table.thrownOn),
  ],
);

/** An outing that is coming: a game, a showcase. */
export const plannedOuting = sqliteTable(
  "planned_outing",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    plannedOn: day("planned_on").notNull(),
    pitches: integer("pitches").notNull(),
    addedByPersonId: text("added_by_person_id").notNull(),
    addedAtMs: instant("added_at_ms").notNull(),
    cancelledAtMs: instant("cancelled_at_ms"),
  },
  (table) => [
    index("planned_outing_by_athlete").on(table.athleteId, table.plannedOn),
    within("planned_outing_pitches", table.pitches, 1, 400),
    isDay("planned_outing_day", table.plannedOn),
  ],
);

/** Append-only: pain or unusual fatigue, by anyone. Stops all throwing. */
export const painReport = sqliteTable(
  "pain_report",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    kind: text("kind", { enum: PAIN_KINDS }).notNull(),
    feltOn: day("felt_on").notNull(),
    sessionId: text("session_id"),
    remarkId: text("remark_id").references(() => remark.id),
    reportedByPersonId: text("reported_by_person_id").notNull(),
    reportedAtMs: instant("reported_at_ms").notNull(),
  },
  (table) => [
    index("pain_report_by_athlete").on(table.athleteId, table.reportedAtMs),
    oneOf("pain_report_kind", table.kind, PAIN_KINDS),
    isDay("pain_report_day", table.feltOn),
  ],
);

/** Append-only: the guardian's (or athlete of age's) word that the arm is well again. */
export const painClearance = sqliteTable(
  "pain_clearance",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    symptomFreeSince: day("symptom_free_since").notNull(),
    examinedByRemarkId: text("examined_by_remark_id")
      .notNull()
      .references(() => remark.id),
    clearedByPersonId: text("cleared_by_person_id").notNull(),
    clearedAtMs: instant("cleared_at_ms").notNull(),
  },
  (table) => [
    index("pain_clearance_by_athlete").on(table.athleteId, table.clearedAtMs),
    isDay("pain_clearance_day", table.symptomFreeSince),
  ],
);

/** Append-only: what the coach asked before mound work, and the answer. */
export const checkIn = sqliteTable(
  "check_in",
  {
    id: text("id").primaryKey(),
    sessionId: text("session_id").notNull(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    thrownSince: flag("thrown_since").notNull(),
    pain: flag("pain").notNull(),
    askedByPersonId: text("asked_by_person_id").notNull(),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [
    index("check_in_by_session").on(table.sessionId, table.athleteId),
    holds("check_in_flags", sql`${table.thrownSince} IN (0, 1) AND ${table.pain} IN (0, 1)`),
  ],
);
