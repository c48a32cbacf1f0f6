import { env } from "../server/env";
import { applyMigrations } from "./apply-migrations";
import { assertGuards, openSqlite } from "./client";

const sqlite = openSqlite(env.databasePath);
applyMigrations(sqlite);
assertGuards(sqlite);
sqlite.close();
console.log(`Database ready: ${env.databasePath}`);
