/** Takes the pictures of docs/pictures from the built demo academy: six screens, phone and laptop, light and dark. */
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Browser, chromium } from "@playwright/test";
import { Sqlite } from "../db/driver";
import { buildIfNeeded } from "../server/start/prepare.mjs";
import startAcademy, { PORT } from "./e2e/start-academy";
import { findChromium } from "./run/chromium.mjs";

const BASE = `http://localhost:${PORT}`;
const FOLDER = fileURLToPath(new URL("../docs/pictures/", import.meta.url));
const SIZES = { phone: { width: 390, height: 844 }, laptop: { width: 1280, height: 800 } };
const THEMES = ["light", "dark"] as const;

interface Picture {
  name: string;
  who: "coach" | "admin" | "guardian";
  path: string;
}

/** The screens, with the ids of the demo as it was built. */
function pictures(): Picture[] {
  const sqlite = database();
  const one = (sql: string) => (sqlite.prepare(sql).get() as { id: string }).id;
  const own = "SELECT a.person_id FROM account a WHERE a.email = 'coach@slabside.example'";
  const roundId = one(
    `SELECT id FROM round WHERE state = 'answered' AND coach_person_id = (${own}) ORDER BY due_at_ms`,
  );
  const athleteId = one(
    "SELECT t.id FROM athlete t JOIN account a ON a.person_id = t.person_id WHERE a.email = 'athlete@slabside.example'",
  );
  const childId = one(
    "SELECT g.athlete_id AS id FROM guardianship g JOIN account a ON a.person_id = g.guardian_person_id JOIN athlete t ON t.id = g.athlete_id WHERE a.email = 'guardian@slabside.example' ORDER BY t.born_on DESC",
  );
  sqlite.close();
  return [
    { name: "today", who: "coach", path: "/today" },
    { name: "review-room", who: "coach", path: `/reviews/${roundId}` },
    { name: "season", who: "coach", path: `/athletes/${athleteId}` },
    { name: "family-home", who: "guardian", path: `/family/${childId}` },
    { name: "calendar", who: "coach", path: "/calendar" },
    { name: "arms", who: "coach", path: "/arms" },
    { name: "ledger", who: "admin", path: "/ledger" },
  ];
}

function database() {
  return new Sqlite(`${process.env.SLABSIDE_E2E_FOLDER}/data/slabside.sqlite`, { readonly: true });
}

async function untilDrawn() {
  for (;;) {
    const sqlite = database();
    const { left } = sqlite.prepare("SELECT count(*) AS left FROM clip WHERE state = 'drawing'").get() as {
      left: number;
    };
    sqlite.close();
    if (left === 0) return;
    console.log(`${left} clips are still being drawn`);
    await new Promise((wait) => setTimeout(wait, 10_000));
  }
}

async function signedIn(browser: Browser, who: string, viewport: { width: number; height: number }) {
  const context = await browser.newContext({ viewport, locale: "en-GB", timezoneId: "America/New_York" });
  const page = await context.newPage();
  await page.goto(`${BASE}/sign-in`);
  await page.getByLabel("E-mail").fill(`${who}@slabside.example`);
  await page.getByLabel("Password").fill("fastball-over-the-corner");
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.waitForURL((url) => !url.pathname.startsWith("/sign-in") && url.pathname !== "/");
  return page;
}

async function takeAll(browser: Browser) {
  for (const picture of pictures()) {
    for (const [size, viewport] of Object.entries(SIZES)) {
      const page = await signedIn(browser, picture.who, viewport);
      await page.goto(`${BASE}${picture.path}`);
      await page.waitForTimeout(3000);
      for (const theme of THEMES) {
        await page.emulateMedia({ colorScheme: theme, reducedMotion: "reduce" });
        await page.screenshot({ path: `${FOLDER}${picture.name}-${size}-${theme}.png` });
      }
      await page.context().close();
      console.log(`${picture.name}, ${size}`);
    }
  }
}

const executablePath = await findChromium();
await buildIfNeeded();
mkdirSync(FOLDER, { recursive: true });
const stop = await startAcademy();
try {
  await untilDrawn();
  const browser = await chromium.launch({
    ...(executablePath ? { executablePath } : {}),
    args: ["--no-sandbox", "--disable-background-networking"],
  });
  await takeAll(browser);
  await browser.close();
} finally {
  await stop();
}
