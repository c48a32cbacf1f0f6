import { applyMigrations } from "@/db/apply-migrations";
import { type Connections, connect, openSqlite } from "@/db/client";
import { remark } from "@/db/schema/people";
import { armsOf } from "@/server/data/arms";
import { unitOfWork } from "@/server/data/unit-of-work";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { fillRecords, NOW_MS } from "./filled-records";
import { compare, type Figure } from "./measure";

const COMMITS = 200;

function fresh(path: string): Connections {
  const sqlite = openSqlite(path);
  applyMigrations(sqlite);
  sqlite.close();
  return connect(path);
}

/** One row a commit, durable: the unit of work against bare statements with the same settings. */
export async function measureCommits(folder: string): Promise<Figure> {
  const ours = fresh(`${folder}/commits-ours.sqlite`);
  const bare = openSqlite(`${folder}/commits-bare.sqlite`);
  applyMigrations(bare);
  const insert = bare.prepare("INSERT INTO remark (id, text) VALUES (?, ?)");
  let serial = 0;
  const figure = await compare(
    `${COMMITS} durable commits of one row: unit of work against bare statements`,
    4,
    async () => {
      for (let count = 0; count < COMMITS; count += 1) {
        serial += 1;
        const id = `rmk_${serial}`;
        await unitOfWork(ours, async (tx) => {
          await tx.insert(remark).values({ id, text: "a remark" });
        });
      }
    },
    () => {
      for (let count = 0; count < COMMITS; count += 1) {
        serial += 1;
        bare.exec("BEGIN IMMEDIATE");
        insert.run(`rmk_${serial}`, "a remark");
        bare.exec("COMMIT");
      }
    },
  );
  ours.close();
  bare.close();
  return figure;
}

/** Claims beside 20,000 others: with the triggers that refuse an overlap against without. */
export async function measureClaims(folder: string): Promise<Figure> {
  const guarded = openSqlite(`${folder}/claims-guarded.sqlite`);
  const bare = openSqlite(`${folder}/claims-bare.sqlite`);
  for (const sqlite of [guarded, bare]) {
    applyMigrations(sqlite);
    sqlite.pragma("foreign_keys = OFF");
  }
  bare.exec("DROP TRIGGER claim_no_overlap_insert");
  let slot = 0;
  const claims = (sqlite: typeof guarded, count: number) => {
    const insert = sqlite.prepare(
      "INSERT INTO claim (id, session_id, resource, starts_at_ms, ends_at_ms) VALUES (?, 's', ?, ?, ?)",
    );
    sqlite.transaction(() => {
      for (let each = 0; each < count; each += 1) {
        slot += 1;
        insert.run(`clm_${slot}`, `lane:${slot % 40}`, slot * 3_600_000, slot * 3_600_000 + 1_800_000);
      }
    })();
  };
  claims(guarded, 20_000);
  claims(bare, 20_000);
  const figure = await compare(
    "1,000 claims beside 20,000: guarded against overlap, against not guarded",
    3,
    () => claims(guarded, 1000),
    () => claims(bare, 1000),
  );
  guarded.close();
  bare.close();
  return figure;
}

/** Today's answer for 200 arms with a season of throws: read and decided, against reading the same rows bare. */
export async function measureArms(folder: string): Promise<Figure> {
  const path = `${folder}/arms.sqlite`;
  const on = fresh(path);
  const ids = await fillRecords(on, 200);
  const bare = openSqlite(path);
  const rows = bare.prepare(
    "SELECT * FROM throw_entry WHERE athlete_id = ? AND thrown_on >= '2026-10-16' ORDER BY thrown_on",
  );
  const figure = await compare(
    "What the book leaves 200 arms today: read and decided, against reading their rows bare",
    25,
    async () => {
      const arms = await armsOf(on.reader, ids, NOW_MS);
      return [...arms.values()].map((arm) => pitchesAllowed({ ...arm, day: arm.today }));
    },
    () => ids.map((id) => rows.all(id)),
  );
  bare.close();
  on.close();
  return figure;
}
