import { sql } from "drizzle-orm";
import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { CHARGE_KINDS } from "../../server/domain/ledger/charge-kind";
import { day, holds, instant, isDay, oneOf, within } from "./columns";
import { athlete } from "./people";

/** The price of a kind of work from a day on; prices are whole minor units. */
export const rate = sqliteTable(
  "rate",
  {
    id: text("id").primaryKey(),
    kind: text("kind", { enum: CHARGE_KINDS }).notNull(),
    priceCents: integer("price_cents").notNull(),
    currency: text("currency").notNull(),
    effectiveFrom: day("effective_from").notNull(),
    /** The first day it no longer holds; null while it does. */
    effectiveTo: day("effective_to"),
  },
  (table) => [
    index("rate_by_kind").on(table.kind, table.effectiveFrom),
    oneOf("rate_kind", table.kind, CHARGE_KINDS),
    within("rate_price", table.priceCents, 0, 100_000_000),
    isDay("rate_from", table.effectiveFrom),
    holds("rate_span", sql`${table.effectiveTo} IS NULL OR ${table.effectiveFrom} < ${table.effectiveTo}`),
  ],
);

/** Append-only: one charge a session and athlete, or a review; a mistake is reversed by a row of its own. */
export const charge = sqliteTable(
  "charge",
  {
    id: text("id").primaryKey(),
    athleteId: text("athlete_id")
      .notNull()
      .references(() => athlete.id),
    kind: text("kind", { enum: CHARGE_KINDS }).notNull(),
    sessionId: text("session_id"),
    reviewId: text("review_id"),
    coachPersonId: text("coach_person_id").notNull(),
    siteId: text("site_id").notNull(),
    chargedOn: day("charged_on").notNull(),
    rateId: text("rate_id")
      .notNull()
      .references(() => rate.id),
    amountCents: integer("amount_cents").notNull(),
    currency: text("currency").notNull(),
    reversesId: text("reverses_id"),
    atMs: instant("at_ms").notNull(),
  },
  (table) => [
    /* The month and its export. */
    index("charge_by_day").on(table.chargedOn),
    index("charge_by_athlete").on(table.athleteId, table.chargedOn),
    uniqueIndex("charge_session_once")
      .on(table.sessionId, table.athleteId)
      .where(sql`session_id IS NOT NULL AND reverses_id IS NULL`),
    uniqueIndex("charge_review_once")
      .on(table.reviewId)
      .where(sql`review_id IS NOT NULL AND reverses_id IS NULL`),
    uniqueIndex("charge_reversed_once").on(table.reversesId),
    oneOf("charge_kind", table.kind, CHARGE_KINDS),
    isDay("charge_day", table.chargedOn),
    holds("charge_of_one_thing", sql`(${table.sessionId} IS NULL) <> (${table.reviewId} IS NULL)`),
    holds(
      "charge_sign",
      sql`(${table.reversesId} IS NULL AND ${table.amountCents} >= 0) OR (${table.reversesId} IS NOT NULL AND ${table.amountCents} <= 0)`,
    ),
  ],
);
