import { randomUUID } from "node:crypto";
import { join } from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { connect, openSqlite } from "@/db/client";
import { Sqlite, type SqliteConnection } from "@/db/driver";
import { scratchFolder } from "../helpers/scratch-folder";

const folder = scratchFolder();
const newPath = () => join(folder, `${randomUUID()}.sqlite`);

const SETTINGS = [
  ["journal_mode", "wal", "journal_mode = DELETE"],
  ["synchronous", 2, "synchronous = NORMAL"],
  ["foreign_keys", 1, "foreign_keys = OFF"],
  ["trusted_schema", 0, "trusted_schema = ON"],
  ["busy_timeout", 5000, "busy_timeout = 0"],
] as const;

afterEach(() => vi.restoreAllMocks());

describe("a connection", () => {
  it.each(SETTINGS)("has %s %s, the first on a file and every later one", (name, wanted) => {
    const path = newPath();
    const opened = [openSqlite(path), openSqlite(path)];
    expect(opened.map((sqlite) => sqlite.pragma(name, { simple: true }))).toEqual([wanted, wanted]);
    for (const sqlite of opened) sqlite.close();
  });

  it.each(SETTINGS)("whose %s came out otherwise is not used", (name, _wanted, otherwise) => {
    const pragma = Sqlite.prototype.pragma;
    vi.spyOn(Sqlite.prototype, "pragma").mockImplementation(function (
      this: SqliteConnection,
      source: string,
      options?: { simple?: boolean },
    ) {
      return pragma.call(this, source.startsWith(`${name} =`) ? otherwise : source, options);
    });
    expect(() => openSqlite(newPath())).toThrow(`The database setting ${name} is`);
  });

  it("would not sync fully by itself when another turned WAL on, which is why it is set on each", () => {
    const path = newPath();
    openSqlite(path).close();
    const bare = new Sqlite(path);
    bare.pragma("journal_mode = WAL");
    expect(bare.pragma("synchronous", { simple: true })).toBe(1);
    bare.close();
  });
});

describe("a process", () => {
  it("reads on another connection than it writes on, and sees only what was committed", async () => {
    const on = connect(newPath());
    on.execute("CREATE TABLE told (word TEXT) STRICT");
    on.execute("BEGIN IMMEDIATE");
    on.execute("INSERT INTO told VALUES ('one')");
    expect(on.reader.$client.prepare("SELECT count(*) FROM told").pluck().get()).toBe(0);
    on.execute("COMMIT");
    expect(on.reader.$client.prepare("SELECT count(*) FROM told").pluck().get()).toBe(1);
    on.close();
  });
});
