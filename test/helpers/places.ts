import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { rate } from "@/db/schema/ledger";
import { academy } from "@/db/schema/people";
import { lane, site, siteHours } from "@/db/schema/sites";
import { checkpointRow } from "@/server/data/checkpoints";
import { CHARGE_KINDS } from "@/server/domain/ledger/charge-kind";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { STARTING_SETTINGS } from "@/server/domain/people/academy-settings";
import { WHO, ZONE } from "./who";

const CREATED_MS = Date.UTC(2026, 0, 5, 15, 0);

/** The academy, its site, lanes, rates and checkpoints. */
export async function fillPlaces(db: Db) {
  await db.insert(academy).values({
    id: "academy",
    isDemo: false,
    ...STARTING_SETTINGS,
    name: "Test academy",
    createdAtMs: CREATED_MS,
  });
  await db.insert(site).values({ id: WHO.site, name: "North site", zone: ZONE, address: "1 Mill Lane" });
  for (const weekday of [1, 2, 3, 4, 5, 6]) {
    await db
      .insert(siteHours)
      .values({ id: `sh_${weekday}`, siteId: WHO.site, weekday, opensMin: 840, closesMin: 1260 });
  }
  await db.insert(lane).values([
    { id: WHO.moundLane, siteId: WHO.site, name: "Lane 1", kind: "mound" },
    { id: WHO.secondMoundLane, siteId: WHO.site, name: "Lane 2", kind: "mound" },
    { id: WHO.flatLane, siteId: WHO.site, name: "Lane 3", kind: "flat" },
  ]);
  for (const kind of CHARGE_KINDS) {
    await db.insert(rate).values({
      id: `rate_${kind}`,
      kind,
      priceCents: kind === "review" ? 3500 : 8000,
      currency: "USD",
      effectiveFrom: "2026-01-01",
    });
  }
  for (const [position, each] of STARTING_LIBRARY.entries()) {
    await db.insert(checkpoint).values({ ...checkpointRow(each), position });
  }
}
