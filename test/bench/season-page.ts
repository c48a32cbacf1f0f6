import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "@playwright/test";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { applyMigrations } from "@/db/apply-migrations";
import { Sqlite } from "@/db/driver";
import { account } from "@/db/schema/people";
import { buildAcademy } from "@/seed/academy";
import { hashPassword } from "@/server/auth/password";
import { insertAcademyRows } from "@/server/data/academy-rows";
import { CLIPS_ADDRESS, CLIPS_PASSWORD, CLIPS_PORT, signedIn } from "../clips/clips-academy";
import { serve } from "../e2e/start-academy";
import { inBrowser, NAMED_IN_PAGE } from "./bench-browser";
import { interactiveMs } from "./in-page";
import { type Figure, percentile95 } from "./measure";

/** The day that the clock of a served academy stands on. */
const TODAY = "2026-11-25";

const CLICKS = 20;
const QUIET_MS = 1000;
const MOST_MS = 1000;

/** How long a coach waits from the click on an athlete of three seasons until the season line answers a key. */
export async function measureSeasonPage(folder: string): Promise<Figure> {
  const home = join(folder, "season page");
  const { athleteId, coachEmail } = await writeDemo(home);
  return inBrowser(
    () => serve(home, CLIPS_PORT),
    async (browser) => {
      const { clicked, bare } = await clickOften(browser, coachEmail, `/athletes/${athleteId}`);
      const value = Math.round(percentile95(clicked));
      return {
        name: `from the click on an athlete of three seasons until the season line answers a key, 95th percentile (the bare answer of the page alone: ${Math.round(percentile95(bare))} ms)`,
        ...{ value, unit: "ms", target: MOST_MS, ok: value <= MOST_MS },
      };
    },
  );
}

/** Writes the demo academy, whose clips nobody draws meanwhile. @returns the athlete with the most rounds, and who coaches them */
async function writeDemo(home: string): Promise<{ athleteId: string; coachEmail: string }> {
  mkdirSync(join(home, "data"), { recursive: true });
  writeFileSync(join(home, "data/academy.txt"), "own\n");
  const sqlite = new Sqlite(join(home, "data/slabside.sqlite"));
  applyMigrations(sqlite);
  const db = drizzle(sqlite);
  const { rows } = buildAcademy({ seed: 1846, today: TODAY });
  await insertAcademyRows(db, rows);
  await db.update(account).set({ passwordHash: await hashPassword(CLIPS_PASSWORD) });
  sqlite.close();
  const rounds = new Map<string, number>();
  for (const { athleteId } of rows.round) rounds.set(athleteId, (rounds.get(athleteId) ?? 0) + 1);
  const athletes = rows.athlete.map(({ id, coachPersonId }) => ({
    id,
    coachPersonId,
    count: rounds.get(id) ?? 0,
  }));
  const [most] = athletes.sort((a, b) => b.count - a.count);
  const coachEmail = rows.account.find(({ personId }) => personId === most?.coachPersonId)?.email;
  if (!most || !coachEmail) throw new Error("The demo has no athlete with rounds and a coach.");
  return { athleteId: most.id, coachEmail };
}

async function clickOften(browser: Browser, coachEmail: string, address: string) {
  const coach = await signedIn(coachEmail);
  const context = await browser.newContext({ storageState: await coach.storageState() });
  await coach.dispose();
  const page = await context.newPage();
  await page.addInitScript(NAMED_IN_PAGE);
  const [clicked, bare]: [number[], number[]] = [[], []];
  for (let click = 0; click <= CLICKS; click += 1) {
    const times = { clicked: await clickOnce(page, address), bare: await answerMs(page, address) };
    /* The first one brings what the browser and the server keep from then on. */
    if (click === 0) continue;
    clicked.push(times.clicked);
    bare.push(times.bare);
  }
  await context.close();
  return { clicked, bare };
}

async function clickOnce(page: Page, address: string): Promise<number> {
  await page.goto(`${CLIPS_ADDRESS}/athletes`);
  const link = page.locator(`a[href="${address}"]`).first();
  await link.waitFor();
  await page.waitForTimeout(QUIET_MS);
  return link.evaluate(interactiveMs);
}

async function answerMs(page: Page, address: string): Promise<number> {
  const startMs = performance.now();
  const answer = await page.request.get(`${CLIPS_ADDRESS}${address}`);
  await answer.body();
  return performance.now() - startMs;
}
