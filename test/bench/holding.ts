import { applyMigrations } from "@/db/apply-migrations";
import { connect, openSqlite } from "@/db/client";
import { holdingFor } from "@/server/api/evidence/holding-view";
import { fillCorrections } from "./filled-corrections";
import { fillRecords, NOW_MS } from "./filled-records";
import { type Figure, slowest } from "./measure";

const ATHLETES = 2000;
const EVERYTHING = { phase: null, checkpointId: null, coachId: null };

/** The ledger of corrections over 2,000 athletes, as its page asks for it: read, reckoned and named. */
export async function measureHolding(folder: string): Promise<Figure> {
  const path = `${folder}/holding.sqlite`;
  const bare = openSqlite(path);
  applyMigrations(bare);
  bare.close();
  const on = connect(path);
  const corrections = await fillCorrections(on, await fillRecords(on, ATHLETES));
  const figure = await slowest(
    `The ledger of ${corrections.toLocaleString("en")} corrections of 2,000 athletes as a screen asks for it`,
    500,
    10,
    async () => {
      const { all } = await holdingFor({ db: on.reader, nowMs: NOW_MS }, EVERYTHING);
      if (all.watched !== corrections) throw new Error("The ledger is not whole.");
    },
  );
  on.close();
  return figure;
}
