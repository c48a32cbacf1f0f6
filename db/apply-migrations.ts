import { fileURLToPath } from "node:url";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { migrate } from "drizzle-orm/better-sqlite3/migrator";
import type { SqliteConnection } from "./driver";

/** Brings a database to the newest form, all in one transaction; nothing happens when it is there already. */
export function applyMigrations(sqlite: SqliteConnection, folder = defaultFolder()) {
  migrate(drizzle(sqlite), { migrationsFolder: folder });
}

function defaultFolder(): string {
  return fileURLToPath(new URL("./migrations", import.meta.url));
}
