import { sql } from "drizzle-orm";
import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { LANE_KINDS } from "../../server/domain/calendar/session-kind";
import { day, holds, instant, isDay, oneOf, within } from "./columns";

/** A place with its own clock. */
export const site = sqliteTable("site", {
  id: text("id").primaryKey(),
  name: text("name").notNull(),
  zone: text("zone").notNull(),
  address: text("address").notNull(),
  retiredAtMs: instant("retired_at_ms"),
});

/** The weekly opening hours of a site, by its wall clock. */
export const siteHours = sqliteTable(
  "site_hours",
  {
    id: text("id").primaryKey(),
    siteId: text("site_id")
      .notNull()
      .references(() => site.id),
    weekday: integer("weekday").notNull(),
    opensMin: integer("opens_min").notNull(),
    closesMin: integer("closes_min").notNull(),
  },
  (table) => [
    index("site_hours_by_site").on(table.siteId),
    within("site_hours_weekday", table.weekday, 1, 7),
    holds(
      "site_hours_span",
      sql`0 <= ${table.opensMin} AND ${table.opensMin} < ${table.closesMin} AND ${table.closesMin} <= 1440`,
    ),
  ],
);

/** A day on which a site is closed all day: a holiday, the weather. */
export const siteClosure = sqliteTable(
  "site_closure",
  {
    id: text("id").primaryKey(),
    siteId: text("site_id")
      .notNull()
      .references(() => site.id),
    closedOn: day("closed_on").notNull(),
    reason: text("reason").notNull(),
  },
  (table) => [
    uniqueIndex("site_closure_once").on(table.siteId, table.closedOn),
    isDay("site_closure_day", table.closedOn),
  ],
);

/** A strip to throw in; a mound lane takes everything, a flat one no mound work. */
export const lane = sqliteTable(
  "lane",
  {
    id: text("id").primaryKey(),
    siteId: text("site_id")
      .notNull()
      .references(() => site.id),
    name: text("name").notNull(),
    kind: text("kind", { enum: LANE_KINDS }).notNull(),
    retiredAtMs: instant("retired_at_ms"),
  },
  (table) => [index("lane_by_site").on(table.siteId), oneOf("lane_kind", table.kind, LANE_KINDS)],
);
