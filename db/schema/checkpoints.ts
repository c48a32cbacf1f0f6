import { sql } from "drizzle-orm";
import { integer, real, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { DELIVERY_EVENTS, DELIVERY_PHASES } from "../../server/domain/mechanics/delivery";
import { MARK_GUIDES } from "../../server/domain/mechanics/mark-guide";
import { MEASURE_KINDS } from "../../server/domain/mechanics/measure-kind";
import { WANTED_WAYS } from "../../server/domain/mechanics/wanted-direction";
import { flag, holds, oneOf } from "./columns";

/** One thing to look at, the academy's own copy of the starting library. Lists are JSON arrays of text. */
export const checkpoint = sqliteTable(
  "checkpoint",
  {
    id: text("id").primaryKey(),
    phase: text("phase", { enum: DELIVERY_PHASES }).notNull(),
    event: text("event", { enum: DELIVERY_EVENTS }).notNull(),
    name: text("name").notNull(),
    absentLooksLike: text("absent_looks_like").notNull(),
    clearLooksLike: text("clear_looks_like").notNull(),
    views: text("views").notNull(),
    cues: text("cues").notNull(),
    drills: text("drills").notNull(),
    source: text("source").notNull(),
    measure: text("measure", { enum: MEASURE_KINDS }),
    guide: text("guide", { enum: MARK_GUIDES }),
    /** Which way its measure is better; null where the academy does not say. `wantedTo` with nearer alone. */
    wanted: text("wanted", { enum: WANTED_WAYS }),
    wantedTo: real("wanted_to"),
    position: integer("position").notNull(),
    active: flag("active").notNull().default(true),
    version: integer("version").notNull().default(1),
  },
  (table) => [
    oneOf("checkpoint_phase", table.phase, DELIVERY_PHASES),
    oneOf("checkpoint_event", table.event, DELIVERY_EVENTS),
    holds(
      "checkpoint_lists_json",
      sql`json_valid(${table.views}) AND json_valid(${table.cues}) AND json_valid(${table.drills})`,
    ),
  ],
);
