import { index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { NOTICE_KINDS, NOTICE_STATES } from "../../server/domain/notices/notice";
import { instant, oneOf } from "./columns";
import { person } from "./people";

/** The outbox: written in the transaction of what it tells of, sent by a job, or kept for an admin to read. */
export const notice = sqliteTable(
  "notice",
  {
    id: text("id").primaryKey(),
    kind: text("kind", { enum: NOTICE_KINDS }).notNull(),
    toPersonId: text("to_person_id")
      .notNull()
      .references(() => person.id),
    aboutAthleteId: text("about_athlete_id"),
    subject: text("subject").notNull(),
    body: text("body").notNull(),
    state: text("state", { enum: NOTICE_STATES }).notNull(),
    attempts: integer("attempts").notNull().default(0),
    nextTryAtMs: instant("next_try_at_ms").notNull(),
    lastError: text("last_error"),
    createdAtMs: instant("created_at_ms").notNull(),
    sentAtMs: instant("sent_at_ms"),
  },
  (table) => [
    /* The sending job asks for what waits. */
    index("notice_by_state").on(table.state, table.nextTryAtMs),
    /* The outbox page shows the latest first. */
    index("notice_by_time").on(table.createdAtMs),
    oneOf("notice_kind", table.kind, NOTICE_KINDS),
    oneOf("notice_state", table.state, NOTICE_STATES),
  ],
);
