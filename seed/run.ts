import { writeFileSync } from "node:fs";
import { connect } from "@/db/client";
import { hashPassword } from "@/server/auth/password";
import { nowMs } from "@/server/clock";
import { insertAcademyRows } from "@/server/data/academy-rows";
import { academyExists } from "@/server/data/accounts";
import { audit } from "@/server/data/audit";
import { unitOfWork } from "@/server/data/unit-of-work";
import { dayOf } from "@/server/domain/time/calendar-day";
import { env } from "@/server/env";
import { buildAcademy } from "./academy";
import { ACADEMY_ZONE } from "./people";

/** The password of every demo sign-in; `npm start` prints it. */
const DEMO_PASSWORD = "fastball-over-the-corner";

/** Any number gives an academy; this one gives the demo. */
const DEMO_SEED = 1846;

/** Fills an empty database with the demo academy and leaves the list of clips that are yet to be drawn. */
async function seedDemo(): Promise<void> {
  const connections = connect(env.databasePath);
  if (await academyExists(connections.reader)) {
    connections.close();
    return;
  }
  const instantMs = nowMs();
  const academy = buildAcademy({ seed: DEMO_SEED, today: dayOf(instantMs, ACADEMY_ZONE), nowMs: instantMs });
  const passwordHash = await hashPassword(DEMO_PASSWORD);
  const account = academy.rows.account.map((row) => ({ ...row, passwordHash }));
  /* The list first: rows that wait for their film without a list would wait for ever. */
  writeFileSync(`${env.dataFolder}/demo-clips.json`, JSON.stringify(academy.demoClips, null, 1));
  await unitOfWork(connections, async (tx) => {
    await insertAcademyRows(tx, { ...academy.rows, account });
    for (const act of academy.acts) await audit(tx, act);
  });
  connections.close();
  console.log(`Demo academy written; ${academy.demoClips.length} clips are yet to be drawn.`);
}

await seedDemo();
