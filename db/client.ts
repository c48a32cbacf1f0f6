import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { Sqlite, type SqliteConnection } from "./driver";
import { GUARD_TRIGGERS } from "./guards";

/** A database handle: the reading connection, or the writing one inside a unit of work. */
export type Db = ReturnType<typeof drizzle>;

/** The two connections of the process: everything is written through `writer`, one unit of work at a time. */
export interface Connections {
  writer: Db;
  reader: Db;
  /** Runs a bare statement on the writing connection: BEGIN IMMEDIATE, COMMIT, ROLLBACK. */
  execute: (statement: string) => void;
  inTransaction: () => boolean;
  close: () => void;
}

const PRAGMAS = {
  journal_mode: "wal",
  synchronous: 2,
  foreign_keys: 1,
  trusted_schema: 0,
  busy_timeout: 5000,
} as const;

/**
 * Opens one connection with the settings that durability rests on, and checks that each is in force. `synchronous` is
 * set on every connection: only the one that turned WAL on would sync fully by itself.
 */
export function openSqlite(path: string): SqliteConnection {
  if (path !== ":memory:") mkdirSync(dirname(path), { recursive: true });
  const sqlite = new Sqlite(path);
  sqlite.pragma("journal_mode = WAL");
  sqlite.pragma("synchronous = FULL");
  sqlite.pragma("foreign_keys = ON");
  sqlite.pragma("trusted_schema = OFF");
  sqlite.pragma("busy_timeout = 5000");
  assertSettings(sqlite, path);
  return sqlite;
}

function assertSettings(sqlite: SqliteConnection, path: string) {
  for (const [name, wanted] of Object.entries(PRAGMAS)) {
    const found = sqlite.pragma(name, { simple: true });
    const right = name === "journal_mode" && path === ":memory:" ? "memory" : wanted;
    if (found !== right) throw new Error(`The database setting ${name} is ${String(found)}, not ${right}.`);
  }
}

/** Opens the writing and the reading connection; an in-memory database has one that serves as both. */
export function connect(path: string): Connections {
  const writing = openSqlite(path);
  const reading = path === ":memory:" ? writing : openSqlite(path);
  return {
    writer: drizzle(writing),
    reader: drizzle(reading),
    execute: (statement) => {
      writing.exec(statement);
    },
    inTransaction: () => writing.inTransaction,
    close: () => {
      writing.close();
      if (reading !== writing) reading.close();
    },
  };
}

/**
 * Checks that every trigger the records rest on is there and reads as it was written.
 * @throws Error naming the first that is missing or altered
 */
export function assertGuards(sqlite: SqliteConnection) {
  const rows = sqlite.prepare("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").all() as {
    name: string;
    sql: string;
  }[];
  const found = new Map(rows.map((row) => [row.name, squeeze(row.sql)]));
  for (const guard of GUARD_TRIGGERS) {
    if (found.get(guard.name) !== squeeze(guard.sql)) {
      throw new Error(
        `The database guard ${guard.name} is missing or altered. Restore a backup, or run npm run db:migrate.`,
      );
    }
  }
}

const squeeze = (sql: string) => sql.replaceAll(/\s+/g, " ").replace(/;\s*$/, "").trim();
