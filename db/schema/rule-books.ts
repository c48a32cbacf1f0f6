import { sql } from "drizzle-orm";
import { index, integer, primaryKey, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { holds, instant, within } from "./columns";

/** Append-only: a book of the academy's own as it was saved, whole. The highest version is the one in force. */
export const ruleBookVersion = sqliteTable(
  "rule_book_version",
  {
    bookId: text("book_id").notNull(),
    version: integer("version").notNull(),
    name: text("name").notNull(),
    /** The book it was copied from. */
    basedOnId: text("based_on_id").notNull(),
    document: text("document").notNull(),
    savedByPersonId: text("saved_by_person_id").notNull(),
    savedAtMs: instant("saved_at_ms").notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.bookId, table.version] }),
    within("rule_book_version_number", table.version, 1, 100_000),
    holds("rule_book_version_json", sql`json_valid(${table.document})`),
  ],
);

/** Append-only: an admin looked a sample book up and says that it is current. */
export const ruleBookConfirmation = sqliteTable(
  "rule_book_confirmation",
  {
    bookId: text("book_id").notNull(),
    confirmedByPersonId: text("confirmed_by_person_id").notNull(),
    confirmedAtMs: instant("confirmed_at_ms").notNull(),
  },
  (table) => [index("rule_book_confirmation_by_book").on(table.bookId)],
);
