import { drizzle } from "drizzle-orm/better-sqlite3";
import { describe, expect, it } from "vitest";
import { applyMigrations } from "@/db/apply-migrations";
import { Sqlite } from "@/db/driver";
import { checkpoint } from "@/db/schema/checkpoints";
import { academy as academyTable, account, auditLog, staffRole } from "@/db/schema/people";
import { site } from "@/db/schema/sites";
import { appRouter } from "@/server/api/root";
import { createCallerFactory } from "@/server/api/trpc";
import { passwordFits } from "@/server/auth/password";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { makeAcademy, TEST_NOW_MS } from "../helpers/academy";
import { because, refuses } from "../helpers/refuses";

const START = {
  academyName: "Millbrook Pitching",
  currency: "USD",
  siteName: "North site",
  zone: "America/Chicago",
  givenName: "Ada",
  familyName: "Frost",
  email: "Ada@Test.Example",
  isCoach: true,
  password: "four unrelated words here",
};

function emptyAcademy() {
  const sqlite = new Sqlite(":memory:");
  sqlite.pragma("foreign_keys = ON");
  applyMigrations(sqlite);
  const db = drizzle(sqlite);
  const connections = {
    writer: db,
    reader: db,
    execute: (statement: string) => void sqlite.exec(statement),
    inTransaction: () => sqlite.inTransaction,
    close: () => sqlite.close(),
  };
  const nobody = createCallerFactory(appRouter)({
    connections,
    actor: null,
    nowMs: TEST_NOW_MS,
    requestId: null,
    address: "test",
  });
  return { db, nobody };
}

describe("the first visit", () => {
  it("makes the academy, its first site, the starting checkpoints and an admin who can sign in", async () => {
    const { db, nobody } = emptyAcademy();
    expect(await nobody.account.academyExists({})).toEqual({ exists: false });
    await nobody.account.startAcademy(START);
    expect(await nobody.account.academyExists({})).toEqual({ exists: true });
    expect((await db.select().from(academyTable))[0]).toMatchObject({
      name: START.academyName,
      isDemo: false,
    });
    expect((await db.select().from(site)).map((row) => row.zone)).toEqual(["America/Chicago"]);
    expect(await db.select().from(checkpoint)).toHaveLength(STARTING_LIBRARY.length);
    const [admin] = await db.select().from(account);
    expect(admin?.email).toBe("ada@test.example");
    expect(await passwordFits(START.password, admin?.passwordHash ?? null)).toBe(true);
    expect((await db.select().from(staffRole)).map((row) => row.role).sort()).toEqual(["admin", "coach"]);
    expect((await db.select().from(auditLog)).map((row) => row.action)).toEqual(["academy.started"]);
  });

  it("is refused once there is an academy, and writes nothing", async () => {
    const academy = await makeAcademy();
    await refuses(academy, null, (api) => api.account.startAcademy(START), {
      code: "CONFLICT",
      ...because("academy_exists"),
    });
  });

  it.each([
    ["a weak password", { password: "short" }],
    ["a zone that does not exist", { zone: "America/Millbrook" }],
    ["no name", { academyName: " " }],
  ])("refuses %s and makes nothing", async (_, change) => {
    const { db, nobody } = emptyAcademy();
    await expect(nobody.account.startAcademy({ ...START, ...change })).rejects.toMatchObject({
      code: "BAD_REQUEST",
    });
    expect(await db.select().from(academyTable)).toEqual([]);
  });
});
