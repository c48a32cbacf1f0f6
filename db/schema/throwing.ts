import { sql } from "drizzle-orm";
import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { PAIN_KINDS } from "../../server/domain/throwing/pain";
import { THROW_KINDS } from "../../server/domain/throwing/throw-entry";
import {
  MOST_INNINGS_CAUGHT,
  MOST_INTENTIONAL_WALKS,
  MOST_OUTS,
} from "../../server/domain/throwing/validate-game";
import { day, flag, holds, instant, isDay, oneOf, within } from "./columns";
import { athlete, remark } from "./people";

/** A team or league an athlete pitches for, with the rule book it plays by. Ended, never deleted. */
export const athleteTeam = sqliteTable(
  "athlete_team",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    name: text("name").notNull(),
    ruleBookId: text("rule_book_id").notNull(),
    addedByPersonId: text("added_by_person_id").notNull(),
    addedAtMs: instant("added_at_ms").notNull(),
    endedAtMs: instant("ended_at_ms"),
  },
  (table) => [
    /* Every limit check asks for the books of the athlete's teams. */
    index("athlete_team_by_athlete").on(table.athleteId),
    holds("athlete_team_name", sql`length(${table.name}) BETWEEN 1 AND 80`),
  ],
);

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
    /** Outs got as the pitcher, in thirds of an inning; null when nobody said. */
    outs: integer("outs"),
    inningsCaught: integer("innings_caught"),
    /** The count before the first pitch to the last batter; null when nobody said. */
    pitchesAtLastBatter: integer("pitches_at_last_batter"),
    intentionalWalks: integer("intentional_walks").notNull().default(0),
    teamId: text("team_id").references(() => athleteTeam.id),
    opponentRemarkId: text("opponent_remark_id").references(() => remark.id),
    /** Of an imported row: what makes it the same row when its file comes again. */
    importKey: text("import_key"),
    replacesId: text("replaces_id"),
    reportedByPersonId: text("reported_by_person_id").notNull(),
    reportedAtMs: instant("reported_at_ms").notNull(),
    remarkId: text("remark_id").references(() => remark.id),
  },
  (table) => [
    /* Every limit check reads an athlete's recent days. */
    index("throw_entry_by_athlete").on(table.athleteId, table.thrownOn),
    uniqueIndex("throw_entry_replaced_once").on(table.replacesId),
    uniqueIndex("throw_entry_imported_once").on(table.importKey),
    oneOf("throw_entry_kind", table.kind, THROW_KINDS),
    within("throw_entry_pitches", table.pitches, 0, 400),
    isDay("throw_entry_day", table.thrownOn),
    within("throw_entry_outs", table.outs, 0, MOST_OUTS),
    within("throw_entry_innings_caught", table.inningsCaught, 0, MOST_INNINGS_CAUGHT),
    holds("throw_entry_last_batter", sql`${table.pitchesAtLastBatter} BETWEEN 0 AND ${table.pitches}`),
    within("throw_entry_intentional_walks", table.intentionalWalks, 0, MOST_INTENTIONAL_WALKS),
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
    teamId: text("team_id").references(() => athleteTeam.id),
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
    /* Every answer about an arm asks when it was last spoken of. */
    index("check_in_by_athlete").on(table.athleteId, table.atMs),
    holds("check_in_flags", sql`${table.thrownSince} IN (0, 1) AND ${table.pain} IN (0, 1)`),
  ],
);

/** Append-only: an admin let an arm throw more on one day than the books say; the latest of a day stands. Never lifts pain. */
export const limitOverride = sqliteTable(
  "limit_override",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    day: day("day").notNull(),
    pitches: integer("pitches").notNull(),
    reasonRemarkId: text("reason_remark_id")
      .notNull()
      .references(() => remark.id),
    byPersonId: text("by_person_id").notNull(),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [
    index("limit_override_by_athlete").on(table.athleteId, table.day),
    /* 0 takes an earlier one of the day back. */
    within("limit_override_pitches", table.pitches, 0, 400),
    isDay("limit_override_day", table.day),
  ],
);
