import { drizzle } from "drizzle-orm/better-sqlite3";
import { applyMigrations } from "@/db/apply-migrations";
import type { Connections, Db } from "@/db/client";
import { Sqlite, type SqliteConnection } from "@/db/driver";
import { coachHours } from "@/db/schema/coaches";
import { account, athlete, consent, guardianship, person, signIn, staffRole } from "@/db/schema/people";
import { appRouter } from "@/server/api/root";
import { createCallerFactory } from "@/server/api/trpc";
import { actorOfSignIn } from "@/server/data/access";
import { VIDEO_CONSENT } from "@/server/domain/people/consent";
import { fillPlaces } from "./places";
import { TEST_NOW_MS, WHO, ZONE } from "./who";

export { TEST_NOW_MS, WHO, ZONE };

/** A moving clock: tests set it by hand. */
export interface Clock {
  ms: number;
}

/** A small academy on a fresh in-memory database with the real migrations. */
export interface TestAcademy {
  connections: Connections;
  db: Db;
  sqlite: SqliteConnection;
  clock: Clock;
  /** A caller of every procedure as this person; null is nobody. */
  as: (personId: string | null, requestId?: string) => Promise<ReturnType<typeof createCaller>>;
  /** Every row of every table, to show that nothing was written. */
  snapshot: () => string;
  /** Does some work and takes back everything that it wrote. */
  discarding: (work: () => Promise<void>) => Promise<void>;
}

const createCaller = createCallerFactory(appRouter);

const CREATED_MS = Date.UTC(2026, 0, 5, 15, 0);

/** Builds the academy: everybody has consented, every kind has a rate, the site is open Mon-Sat 14:00 to 21:00. */
export async function makeAcademy(): Promise<TestAcademy> {
  const sqlite = new Sqlite(":memory:");
  sqlite.pragma("foreign_keys = ON");
  applyMigrations(sqlite);
  const db = drizzle(sqlite);
  const nesting = { on: false };
  const connections = connectionsOf(sqlite, db, nesting);
  const clock = { ms: TEST_NOW_MS };
  await fillPlaces(db);
  await fillPeople(db);
  return {
    connections,
    db,
    sqlite,
    clock,
    as: async (personId, requestId) =>
      createCaller({
        connections,
        actor: personId ? await actorOfSignIn(db, `sgn_${personId}`, clock.ms) : null,
        nowMs: clock.ms,
        requestId: requestId ?? null,
        address: "test",
      }),
    snapshot: () => snapshotOf(sqlite),
    async discarding(work) {
      sqlite.exec("BEGIN");
      nesting.on = true;
      try {
        await work();
      } finally {
        nesting.on = false;
        sqlite.exec("ROLLBACK");
      }
    },
  };
}

/* Within `discarding` a unit of work is a savepoint of the transaction that is taken back in the end. */
const NESTED: Record<string, string> = {
  "BEGIN IMMEDIATE": "SAVEPOINT unit",
  COMMIT: "RELEASE unit",
  ROLLBACK: "ROLLBACK TO unit; RELEASE unit",
};

function connectionsOf(sqlite: SqliteConnection, db: Db, nesting: { on: boolean }): Connections {
  return {
    writer: db,
    reader: db,
    execute: (statement) => void sqlite.exec((nesting.on && NESTED[statement]) || statement),
    inTransaction: () => sqlite.inTransaction,
    close: () => sqlite.close(),
  };
}

async function fillPeople(db: Db) {
  const adults: [string, string, string][] = [
    [WHO.admin, "Ada", "Frost"],
    [WHO.coach, "Cole", "Rivers"],
    [WHO.otherCoach, "Dana", "Field"],
    [WHO.guardian, "Gwen", "Marsh"],
    [WHO.otherGuardian, "Otto", "Stone"],
  ];
  for (const [id, givenName, familyName] of adults) await addPerson(db, id, givenName, familyName);
  await db.insert(staffRole).values([
    { personId: WHO.admin, role: "admin" },
    { personId: WHO.coach, role: "coach" },
    { personId: WHO.otherCoach, role: "coach" },
  ]);
  for (const coachPersonId of [WHO.coach, WHO.otherCoach]) {
    for (const weekday of [1, 2, 3, 4, 5, 6]) {
      await db.insert(coachHours).values({
        id: `ch_${coachPersonId}_${weekday}`,
        coachPersonId,
        siteId: WHO.site,
        weekday,
        startsMin: 840,
        endsMin: 1260,
      });
    }
  }
  await addAthlete(db, WHO.child, "Kit", "Marsh", "2014-05-10", "right", WHO.coach, WHO.guardian);
  await addAthlete(db, WHO.teen, "Robin", "Marsh", "2010-03-02", "left", WHO.coach, WHO.guardian);
  await addAthlete(db, WHO.adult, "Sam", "Vale", "2007-08-20", "right", WHO.coach, null);
  await addAthlete(
    db,
    WHO.stranger,
    "Pip",
    "Stone",
    "2014-01-15",
    "right",
    WHO.otherCoach,
    WHO.otherGuardian,
  );
}

/** A person with an account and a live sign-in `sgn_<personId>`. */
export async function addPerson(db: Db, id: string, givenName: string, familyName: string) {
  const email = `${givenName}.${familyName}.${id}@test.example`.toLowerCase();
  await db.insert(person).values({ id, givenName, familyName, email, createdAtMs: CREATED_MS });
  await db.insert(account).values({ personId: id, email, createdAtMs: CREATED_MS });
  await db.insert(signIn).values({
    id: `sgn_${id}`,
    personId: id,
    device: "test",
    createdAtMs: CREATED_MS,
    lastSeenAtMs: CREATED_MS,
    expiresAtMs: TEST_NOW_MS + 365 * 86_400_000,
  });
}

/** An athlete with a guardian (or none, when of age) and consent to video. */
export async function addAthlete(
  db: Db,
  ids: { athleteId: string; personId: string },
  givenName: string,
  familyName: string,
  bornOn: string,
  throws: "right" | "left",
  coachPersonId: string,
  guardianPersonId: string | null,
) {
  await addPerson(db, ids.personId, givenName, familyName);
  await db.insert(athlete).values({
    id: ids.athleteId,
    personId: ids.personId,
    bornOn,
    throws,
    homeSiteId: WHO.site,
    coachPersonId,
    ruleBookId: "usa-baseball-2018",
    joinedOn: "2026-01-05",
  });
  if (guardianPersonId) {
    await db.insert(guardianship).values({ guardianPersonId, athleteId: ids.athleteId, sinceMs: CREATED_MS });
  }
  await db.insert(consent).values({
    id: `con_${ids.athleteId}`,
    athleteId: ids.athleteId,
    personId: guardianPersonId ?? ids.personId,
    purpose: "video",
    kind: "given",
    textVersion: VIDEO_CONSENT.version,
    atMs: CREATED_MS,
  });
}

function snapshotOf(sqlite: SqliteConnection): string {
  const tables = sqlite
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name")
    .all() as { name: string }[];
  return JSON.stringify(
    tables.map(({ name }) => [name, sqlite.prepare(`SELECT * FROM "${name}" ORDER BY rowid`).all()]),
  );
}
