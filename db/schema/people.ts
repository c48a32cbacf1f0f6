import { sql } from "drizzle-orm";
import { index, integer, primaryKey, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { PROMISE_KINDS } from "../../server/domain/people/academy-settings";
import { CONSENT_KINDS, CONSENT_PURPOSES } from "../../server/domain/people/consent";
import { LINK_PURPOSES, STAFF_ROLES, THROWING_HANDS } from "../../server/domain/people/person";
import { MOUND_WORK_KINDS } from "../../server/domain/throwing/throw-entry";
import { day, flag, holds, instant, isDay, oneOf, within } from "./columns";
import { site } from "./sites";

/** One row: the academy and the settings that every capability reads. */
export const academy = sqliteTable(
  "academy",
  {
    id: text("id").primaryKey(),
    name: text("name").notNull(),
    currency: text("currency").notNull(),
    isDemo: flag("is_demo").notNull(),
    promiseKind: text("promise_kind", { enum: PROMISE_KINDS }).notNull(),
    promiseAmount: integer("promise_amount").notNull(),
    maxOpenCorrections: integer("max_open_corrections").notNull(),
    replySpanDays: integer("reply_span_days").notNull(),
    followUpDays: integer("follow_up_days").notNull(),
    clipRetentionDays: integer("clip_retention_days").notNull(),
    bookingNoticeMin: integer("booking_notice_min").notNull(),
    bookingHorizonDays: integer("booking_horizon_days").notNull(),
    /** JSON: the mound work that counts as pitches, of `MOUND_WORK_KINDS`. */
    countedKinds: text("counted_kinds", { mode: "json" })
      .$type<(typeof MOUND_WORK_KINDS)[number][]>()
      .notNull()
      .default([...MOUND_WORK_KINDS]),
    createdAtMs: instant("created_at_ms").notNull(),
    version: integer("version").notNull().default(1),
  },
  (table) => [
    holds("academy_counted_kinds_json", sql`json_valid(${table.countedKinds})`),
    holds("academy_is_one", sql`${table.id} = 'academy'`),
    oneOf("academy_promise_kind", table.promiseKind, PROMISE_KINDS),
    within("academy_promise_amount", table.promiseAmount, 1, 240),
    within("academy_max_open_corrections", table.maxOpenCorrections, 1, 10),
    within("academy_reply_span_days", table.replySpanDays, 1, 120),
    within("academy_follow_up_days", table.followUpDays, 1, 120),
    within("academy_clip_retention_days", table.clipRetentionDays, 7, 3650),
    within("academy_booking_notice_min", table.bookingNoticeMin, 0, 20160),
    within("academy_booking_horizon_days", table.bookingHorizonDays, 1, 400),
  ],
);

/** Names and addresses live here alone, so that they can be erased while other rows keep the id. */
export const person = sqliteTable("person", {
  id: text("id").primaryKey(),
  givenName: text("given_name").notNull(),
  familyName: text("family_name").notNull(),
  email: text("email"),
  phone: text("phone"),
  createdAtMs: instant("created_at_ms").notNull(),
  erasedAtMs: instant("erased_at_ms"),
});

/** Who may sign in. No password hash yet means invited and not joined. */
export const account = sqliteTable(
  "account",
  {
    personId: text("person_id")
      .primaryKey()
      .references(() => person.id),
    email: text("email").notNull(),
    passwordHash: text("password_hash"),
    createdAtMs: instant("created_at_ms").notNull(),
    disabledAtMs: instant("disabled_at_ms"),
  },
  (table) => [
    uniqueIndex("account_email_once").on(table.email),
    holds("account_email_lower", sql`${table.email} = lower(${table.email})`),
  ],
);

/** Staff roles; one person may hold both. */
export const staffRole = sqliteTable(
  "staff_role",
  {
    personId: text("person_id")
      .notNull()
      .references(() => person.id),
    role: text("role", { enum: STAFF_ROLES }).notNull(),
    endedAtMs: instant("ended_at_ms"),
  },
  (table) => [
    primaryKey({ columns: [table.personId, table.role] }),
    oneOf("staff_role_role", table.role, STAFF_ROLES),
  ],
);

/** An arm the academy looks after. */
export const athlete = sqliteTable(
  "athlete",
  {
    id: text("id").primaryKey(),
    personId: text("person_id")
      .notNull()
      .references(() => person.id),
    bornOn: day("born_on").notNull(),
    throws: text("throws", { enum: THROWING_HANDS }).notNull(),
    heightCm: integer("height_cm"),
    homeSiteId: text("home_site_id")
      .notNull()
      .references(() => site.id),
    coachPersonId: text("coach_person_id").references(() => person.id),
    ruleBookId: text("rule_book_id").notNull(),
    joinedOn: day("joined_on").notNull(),
    leftOn: day("left_on"),
    /** Set by an athlete of age who lets guardians go on seeing their record. */
    grantsGuardians: flag("grants_guardians").notNull().default(false),
    version: integer("version").notNull().default(1),
  },
  (table) => [
    uniqueIndex("athlete_person_once").on(table.personId),
    /* Today and the athletes list show a coach's own athletes first. */
    index("athlete_by_coach").on(table.coachPersonId),
    isDay("athlete_born_on", table.bornOn),
    isDay("athlete_joined_on", table.joinedOn),
    oneOf("athlete_throws", table.throws, THROWING_HANDS),
    within("athlete_height", table.heightCm, 80, 230),
  ],
);

/** Who stands for whom. Ended, never deleted. */
export const guardianship = sqliteTable(
  "guardianship",
  {
    guardianPersonId: text("guardian_person_id")
      .notNull()
      .references(() => person.id),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    sinceMs: instant("since_ms").notNull(),
    endedAtMs: instant("ended_at_ms"),
  },
  (table) => [
    primaryKey({ columns: [table.guardianPersonId, table.athleteId] }),
    /* Every notice about a minor looks up the guardians. */
    index("guardianship_by_athlete").on(table.athleteId),
  ],
);

/** What the sign-in library calls a session: read on every request, so that ending one works at once. */
export const signIn = sqliteTable(
  "sign_in",
  {
    id: text("id").primaryKey(),
    personId: text("person_id")
      .notNull()
      .references(() => person.id),
    device: text("device").notNull(),
    createdAtMs: instant("created_at_ms").notNull(),
    lastSeenAtMs: instant("last_seen_at_ms").notNull(),
    expiresAtMs: instant("expires_at_ms").notNull(),
    endedAtMs: instant("ended_at_ms"),
  },
  (table) => [index("sign_in_by_person").on(table.personId)],
);

/** Single-use links for invitation and password reset; only the SHA-256 of the token is kept. */
export const accountLink = sqliteTable(
  "account_link",
  {
    tokenHash: text("token_hash").primaryKey(),
    personId: text("person_id")
      .notNull()
      .references(() => person.id),
    purpose: text("purpose", { enum: LINK_PURPOSES }).notNull(),
    createdAtMs: instant("created_at_ms").notNull(),
    expiresAtMs: instant("expires_at_ms").notNull(),
    usedAtMs: instant("used_at_ms"),
  },
  (table) => [oneOf("account_link_purpose", table.purpose, LINK_PURPOSES)],
);

/** Append-only: the latest row for an athlete and purpose is in force. */
export const consent = sqliteTable(
  "consent",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    personId: text("person_id")
      .notNull()
      .references(() => person.id),
    purpose: text("purpose", { enum: CONSENT_PURPOSES }).notNull(),
    kind: text("kind", { enum: CONSENT_KINDS }).notNull(),
    textVersion: text("text_version").notNull(),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [
    /* Sending and serving a clip look up the live consent. */
    index("consent_by_athlete").on(table.athleteId, table.purpose, table.atMs),
    oneOf("consent_purpose", table.purpose, CONSENT_PURPOSES),
    oneOf("consent_kind", table.kind, CONSENT_KINDS),
  ],
);

/** Free text of append-only rows, apart from them so that it can be erased. */
export const remark = sqliteTable("remark", {
  id: text("id").primaryKey(),
  text: text("text").notNull(),
  erasedAtMs: instant("erased_at_ms"),
});

/** Append-only, hash-chained: who did what to which record. Ids only, no names. */
export const auditLog = sqliteTable(
  "audit_log",
  {
    sequence: integer("sequence").primaryKey({ autoIncrement: true }),
    atMs: instant("at_ms").notNull(),
    actorPersonId: text("actor_person_id"),
    action: text("action").notNull(),
    subjectId: text("subject_id").notNull(),
    facts: text("facts").notNull(),
    previousHash: text("previous_hash").notNull(),
    hash: text("hash").notNull(),
  },
  (table) => [holds("audit_log_facts_json", sql`json_valid(${table.facts})`)],
);

/** The answer a command gave, kept under the id its caller made, so that a repeated call changes nothing. */
export const givenAnswer = sqliteTable(
  "given_answer",
  {
    requestId: text("request_id").primaryKey(),
    personId: text("person_id"),
    path: text("path").notNull(),
    fingerprint: text("fingerprint").notNull(),
    answer: text("answer").notNull(),
    atMs: instant("at_ms").notNull(),
  },
  /* The daily clean-up drops old rows. */
  (table) => [index("given_answer_by_time").on(table.atMs)],
);
