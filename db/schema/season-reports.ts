import { sql } from "drizzle-orm";
import { index, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { day, holds, instant } from "./columns";
import { athlete, remark } from "./people";

/** Append-only: what a coach writes into a season's report; the latest of a season holds. */
export const seasonReport = sqliteTable(
  "season_report",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    /** The season's first and last day. */
    fromOn: day("from_on").notNull(),
    toOn: day("to_on").notNull(),
    /** What the next season is for. */
    focusRemarkId: text("focus_remark_id").references(() => remark.id),
    writtenByPersonId: text("written_by_person_id").notNull(),
    writtenAtMs: instant("written_at_ms").notNull(),
  },
  (table) => [
    index("season_report_by_athlete").on(table.athleteId, table.fromOn, table.writtenAtMs),
    holds("season_report_span", sql`${table.fromOn} < ${table.toOn}`),
  ],
);

/** An address under which a season's report is read without signing in, until it expires; the SHA-256 of its token alone. */
export const reportLink = sqliteTable(
  "report_link",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    fromOn: day("from_on").notNull(),
    toOn: day("to_on").notNull(),
    tokenHash: text("token_hash").notNull(),
    madeByPersonId: text("made_by_person_id").notNull(),
    madeAtMs: instant("made_at_ms").notNull(),
    expiresAtMs: instant("expires_at_ms").notNull(),
    revokedAtMs: instant("revoked_at_ms"),
  },
  (table) => [
    uniqueIndex("report_link_by_token").on(table.tokenHash),
    index("report_link_by_athlete").on(table.athleteId, table.fromOn),
    holds(
      "report_link_span",
      sql`${table.fromOn} < ${table.toOn} AND ${table.madeAtMs} < ${table.expiresAtMs}`,
    ),
  ],
);
