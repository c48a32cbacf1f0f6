import { sql } from "drizzle-orm";
import { index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { holds, instant, within } from "./columns";
import { person } from "./people";
import { site } from "./sites";

/** When a coach works where, week by week, by the site's wall clock. */
export const coachHours = sqliteTable(
  "coach_hours",
  {
    id: text("id").primaryKey(),
    coachPersonId: text("coach_person_id")
      .notNull()
      .references(() => person.id),
    siteId: text("site_id")
      .notNull()
      .references(() => site.id),
    weekday: integer("weekday").notNull(),
    startsMin: integer("starts_min").notNull(),
    endsMin: integer("ends_min").notNull(),
  },
  (table) => [
    index("coach_hours_by_coach").on(table.coachPersonId),
    within("coach_hours_weekday", table.weekday, 1, 7),
    holds(
      "coach_hours_span",
      sql`0 <= ${table.startsMin} AND ${table.startsMin} < ${table.endsMin} AND ${table.endsMin} <= 1440`,
    ),
  ],
);

/** Time a coach is away, `[startsAtMs, endsAtMs)`. */
export const coachAbsence = sqliteTable(
  "coach_absence",
  {
    id: text("id").primaryKey(),
    coachPersonId: text("coach_person_id")
      .notNull()
      .references(() => person.id),
    startsAtMs: instant("starts_at_ms").notNull(),
    endsAtMs: instant("ends_at_ms").notNull(),
  },
  (table) => [
    index("coach_absence_by_coach").on(table.coachPersonId, table.startsAtMs),
    holds("coach_absence_span", sql`${table.startsAtMs} < ${table.endsAtMs}`),
  ],
);
