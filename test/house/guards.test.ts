import { describe, expect, it } from "vitest";
import { applyMigrations } from "@/db/apply-migrations";
import { assertGuards } from "@/db/client";
import { Sqlite, type SqliteConnection } from "@/db/driver";
import { APPEND_ONLY_TABLES, GUARD_TRIGGERS, STAYING_COLUMNS } from "@/db/guards";
import { filesBelow, textOf } from "./house";

function freshDatabase() {
  const sqlite = new Sqlite(":memory:");
  applyMigrations(sqlite);
  return sqlite;
}

/** Puts a row of made-up values into a table, whatever its references and conditions would say. */
function plantRow(sqlite: SqliteConnection, table: string) {
  sqlite.pragma("foreign_keys = OFF");
  sqlite.pragma("ignore_check_constraints = ON");
  const columns = sqlite.pragma(`table_info(${table})`) as { name: string; type: string; notnull: number }[];
  const wanted = columns.filter((column) => column.notnull === 1);
  const values = wanted.map((column) => (column.type.toUpperCase() === "TEXT" ? "x" : 1));
  const names = wanted.map((column) => column.name);
  sqlite
    .prepare(`INSERT INTO ${table} (${names.join(", ")}) VALUES (${names.map(() => "?").join(", ")})`)
    .run(...values);
  return names[0] as string;
}

describe.each(APPEND_ONLY_TABLES)("a row of %s", (table) => {
  const sqlite = freshDatabase();
  const column = plantRow(sqlite, table);
  const before = sqlite.prepare(`SELECT * FROM ${table}`).all();

  it.each([`UPDATE ${table} SET ${column} = ${column}`, `DELETE FROM ${table}`])("outlives %s", (sql) => {
    expect(() => sqlite.exec(sql)).toThrow(`${table}_append_only`);
    expect(sqlite.prepare(`SELECT * FROM ${table}`).all()).toEqual(before);
  });
});

describe.each(Object.entries(STAYING_COLUMNS))("a row of %s", (table, columns) => {
  const sqlite = freshDatabase();
  plantRow(sqlite, table);
  const before = sqlite.prepare(`SELECT * FROM ${table}`).all();
  const names = (sqlite.pragma(`table_info(${table})`) as { name: string }[]).map(({ name }) => name);

  it.each(columns.map((column) => `UPDATE ${table} SET ${column} = ${column}`))("outlives %s", (sql) => {
    expect(() => sqlite.exec(sql)).toThrow(`${table}_stays`);
    expect(sqlite.prepare(`SELECT * FROM ${table}`).all()).toEqual(before);
  });

  it("outlives being deleted", () => {
    expect(() => sqlite.exec(`DELETE FROM ${table}`)).toThrow(`${table}_stays`);
  });

  it("may change in its words, so that they can be erased, and in where it stands, and in nothing else", () => {
    const free = names.filter((name) => !(columns as readonly string[]).includes(name));
    const words = {
      keep: ["text", "voice_id"],
      correction: ["cue", "drill", "state", "came_back", "closed_at_ms", "voice_id"],
    };
    expect(free).toEqual(words[table as keyof typeof words]);
    for (const column of free) sqlite.exec(`UPDATE ${table} SET ${column} = ${column}`);
  });
});

describe("claims", () => {
  const HOUR = 3_600_000;
  const insert =
    "INSERT INTO claim (id, session_id, resource, starts_at_ms, ends_at_ms) VALUES (?, 's', ?, ?, ?)";

  /** A database with one claim of lane 1 from 10 to 12. */
  function claimed() {
    const sqlite = freshDatabase();
    sqlite.pragma("foreign_keys = OFF");
    sqlite.prepare(insert).run("a", "lane:1", 10 * HOUR, 12 * HOUR);
    return sqlite;
  }

  it.each([
    ["inside", 10.5, 11],
    ["over its start", 9, 10.1],
    ["over its end", 11.9, 14],
    ["around", 9, 13],
    ["the same", 10, 12],
  ])("of one resource are refused %s, inserted or moved there", (_where, from, to) => {
    const sqlite = claimed();
    expect(() => sqlite.prepare(insert).run("b", "lane:1", from * HOUR, to * HOUR)).toThrow(
      "claim_no_overlap",
    );
    sqlite.prepare(insert).run("b", "lane:1", 20 * HOUR, 21 * HOUR);
    const move = sqlite.prepare("UPDATE claim SET starts_at_ms = ?, ends_at_ms = ? WHERE id = 'b'");
    expect(() => move.run(from * HOUR, to * HOUR)).toThrow("claim_no_overlap");
  });

  it("may touch, and be of another resource", () => {
    const sqlite = claimed();
    sqlite.prepare(insert).run("b", "lane:1", 12 * HOUR, 13 * HOUR);
    sqlite.prepare(insert).run("c", "lane:1", 9 * HOUR, 10 * HOUR);
    sqlite.prepare(insert).run("d", "lane:2", 10 * HOUR, 12 * HOUR);
    expect(sqlite.prepare("SELECT count(*) FROM claim").pluck().get()).toBe(4);
  });

  it("are never longer than the search for overlaps looks back", () => {
    const sqlite = claimed();
    expect(() => sqlite.prepare(insert).run("b", "lane:3", 0, 4 * HOUR + 1)).toThrow("claim_span");
    sqlite.prepare(insert).run("b", "lane:3", 0, 4 * HOUR);
    expect(() => sqlite.prepare(insert).run("c", "lane:3", 4 * HOUR - 1, 5 * HOUR)).toThrow(
      "claim_no_overlap",
    );
  });
});

describe("the guards", () => {
  const migrations = filesBelow("db/migrations")
    .filter((path) => path.endsWith(".sql"))
    .map(textOf)
    .join("\n");

  it.each(GUARD_TRIGGERS.map((guard) => [guard.name, guard.sql]))(
    "hold %s word for word in the migrations",
    (_, sql) => {
      expect(migrations).toContain(`${sql};`);
    },
  );

  it("are all there after the migrations", () => {
    expect(() => assertGuards(freshDatabase())).not.toThrow();
  });

  it.each(GUARD_TRIGGERS.map((guard) => guard.name))("are missed when %s is gone", (name) => {
    const sqlite = freshDatabase();
    sqlite.exec(`DROP TRIGGER ${name}`);
    expect(() => assertGuards(sqlite)).toThrow(name);
  });

  it("are missed when one was altered", () => {
    const sqlite = freshDatabase();
    sqlite.exec("DROP TRIGGER charge_append_only_update");
    sqlite.exec(
      "CREATE TRIGGER charge_append_only_update BEFORE UPDATE ON charge WHEN 0 BEGIN SELECT 1; END",
    );
    expect(() => assertGuards(sqlite)).toThrow("charge_append_only_update");
  });
});

describe("every table", () => {
  const sqlite = freshDatabase();
  const tables = (
    sqlite.pragma("table_list") as { schema: string; name: string; type: string; strict: number }[]
  ).filter((table) => table.schema === "main" && table.type === "table" && !/^(sqlite_|__)/.test(table.name));

  it("is strict", () => {
    expect(tables.length).toBeGreaterThan(30);
    expect(tables.filter((table) => table.strict !== 1).map((table) => table.name)).toEqual([]);
  });
});
