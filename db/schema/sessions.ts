import { sql } from "drizzle-orm";
import { index, integer, primaryKey, real, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { SPEED_UNITS } from "../../server/domain/calendar/radar-speed";
import { SECOND_ADULT_KINDS } from "../../server/domain/calendar/second-adult";
import { MAX_SESSION_MIN, SESSION_KINDS } from "../../server/domain/calendar/session-kind";
import { ATTENDANCES, SESSION_STATES, WORK_OUTCOMES } from "../../server/domain/calendar/session-state";
import { holds, instant, oneOf, within } from "./columns";
import { correction } from "./corrections";
import { athlete, person, remark } from "./people";
import { round } from "./rounds";
import { lane, site } from "./sites";

/** A coaching session, `[startsAtMs, endsAtMs)`. */
export const session = sqliteTable(
  "session",
  {
    id: text("id").primaryKey(),
    kind: text("kind", { enum: SESSION_KINDS }).notNull(),
    state: text("state", { enum: SESSION_STATES }).notNull(),
    siteId: text("site_id")
      .notNull()
      .references(() => site.id),
    laneId: text("lane_id")
      .notNull()
      .references(() => lane.id),
    coachPersonId: text("coach_person_id")
      .notNull()
      .references(() => person.id),
    startsAtMs: instant("starts_at_ms").notNull(),
    endsAtMs: instant("ends_at_ms").notNull(),
    places: integer("places").notNull(),
    secondAdultKind: text("second_adult_kind", { enum: SECOND_ADULT_KINDS }),
    secondAdultPersonId: text("second_adult_person_id").references(() => person.id),
    roundId: text("round_id").references(() => round.id),
    bookedByPersonId: text("booked_by_person_id").notNull(),
    bookedAtMs: instant("booked_at_ms").notNull(),
    cancelledAtMs: instant("cancelled_at_ms"),
    cancelRemarkId: text("cancel_remark_id").references(() => remark.id),
    version: integer("version").notNull().default(1),
  },
  (table) => [
    /* The day line, the calendar and the month ask by time. */
    index("session_by_start").on(table.startsAtMs),
    oneOf("session_kind", table.kind, SESSION_KINDS),
    oneOf("session_state", table.state, SESSION_STATES),
    oneOf("session_second_adult_kind", table.secondAdultKind, SECOND_ADULT_KINDS),
    within("session_places", table.places, 1, 40),
    holds(
      "session_span",
      sql`${table.startsAtMs} < ${table.endsAtMs} AND ${table.endsAtMs} - ${table.startsAtMs} <= ${sql.raw(String(MAX_SESSION_MIN * 60_000))}`,
    ),
    holds(
      "session_second_adult_whole",
      sql`(${table.secondAdultKind} IS NULL) = (${table.secondAdultPersonId} IS NULL)`,
    ),
  ],
);

/** Who comes to a session, and how many pitches are planned for that arm. */
export const sessionAthlete = sqliteTable(
  "session_athlete",
  {
    sessionId: text("session_id")
      .notNull()
      .references(() => session.id),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    plannedPitches: integer("planned_pitches").notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.sessionId, table.athleteId] }),
    /* The arm's planned throws and the family's first screen ask by athlete. */
    index("session_athlete_by_athlete").on(table.athleteId),
    within("session_athlete_pitches", table.plannedPitches, 0, 400),
  ],
);

/** The corrections a session is to confirm: a correction given on video is the lesson's plan. */
export const sessionPlan = sqliteTable(
  "session_plan",
  {
    sessionId: text("session_id")
      .notNull()
      .references(() => session.id),
    correctionId: text("correction_id")
      .notNull()
      .references(() => correction.id),
  },
  (table) => [primaryKey({ columns: [table.sessionId, table.correctionId] })],
);

/**
 * What a session takes: one row for its coach, its lane, each athlete and a second adult of the staff. Two triggers
 * refuse overlapping claims on one resource (`claim_no_overlap`); the longest span is bounded so that their search
 * stays on the index.
 */
export const claim = sqliteTable(
  "claim",
  {
    id: text("id").primaryKey(),
    sessionId: text("session_id")
      .notNull()
      .references(() => session.id),
    resource: text("resource").notNull(),
    startsAtMs: instant("starts_at_ms").notNull(),
    endsAtMs: instant("ends_at_ms").notNull(),
  },
  (table) => [
    /* The overlap search and the finder's busy times. */
    index("claim_by_resource").on(table.resource, table.startsAtMs),
    index("claim_by_session").on(table.sessionId),
    holds(
      "claim_span",
      sql`${table.startsAtMs} < ${table.endsAtMs} AND ${table.endsAtMs} - ${table.startsAtMs} <= ${sql.raw(String(MAX_SESSION_MIN * 60_000))}`,
    ),
  ],
);

/** Append-only: what was done, one row a session and athlete. */
export const sessionLog = sqliteTable(
  "session_log",
  {
    id: text("id").primaryKey(),
    sessionId: text("session_id")
      .notNull()
      .references(() => session.id),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    attendance: text("attendance", { enum: ATTENDANCES }).notNull(),
    minutes: integer("minutes").notNull(),
    pitches: integer("pitches").notNull(),
    /** How hard it was, 0 to 10; null when nobody said. */
    effort: integer("effort"),
    /** Strikes among the pitches; null when nobody counted. */
    strikes: integer("strikes"),
    /** The fastest pitch by radar, in the unit it was read in; both null when none was read. */
    topSpeed: real("top_speed"),
    speedUnit: text("speed_unit", { enum: SPEED_UNITS }),
    remarkId: text("remark_id").references(() => remark.id),
    loggedByPersonId: text("logged_by_person_id").notNull(),
    loggedAtMs: instant("logged_at_ms").notNull(),
  },
  (table) => [
    index("session_log_by_session").on(table.sessionId),
    index("session_log_by_athlete").on(table.athleteId),
    oneOf("session_log_attendance", table.attendance, ATTENDANCES),
    within("session_log_minutes", table.minutes, 0, MAX_SESSION_MIN),
    within("session_log_pitches", table.pitches, 0, 400),
    within("session_log_effort", table.effort, 0, 10),
  ],
);

/** Append-only: a correction worked on, or confirmed in person. */
export const sessionWork = sqliteTable(
  "session_work",
  {
    sessionLogId: text("session_log_id")
      .notNull()
      .references(() => sessionLog.id),
    correctionId: text("correction_id")
      .notNull()
      .references(() => correction.id),
    outcome: text("outcome", { enum: WORK_OUTCOMES }).notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.sessionLogId, table.correctionId] }),
    oneOf("session_work_outcome", table.outcome, WORK_OUTCOMES),
  ],
);
