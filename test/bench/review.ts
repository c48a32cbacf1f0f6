import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "@playwright/test";
import { clipParameters } from "@/seed/clips/clip-parameters";
import { drawClip } from "@/seed/clips/draw-clip";
import {
  CLIPS_ADDRESS,
  CLIPS_COACH,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import { type SixFindings, writeSixFindings } from "../e2e/six-findings";
import { WHO } from "../helpers/who";
import { inBrowser } from "./bench-browser";
import { type Act, costByPart, costOf, OPERATOR_S, type Operator, typedByHand } from "./keystroke-level";
import type { Figure } from "./measure";

/** A coach who talks a review through watches as long; the hands may cost this much beyond. */
const MOST_S = 90;

/** What a review of six findings costs the hands, and what typing the same words into a message would. */
export async function measureReview(folder: string): Promise<{ figures: Figure[]; table: string }> {
  const start = async () => (await startClipsAcademy()).stop;
  const { hands, said } = await inBrowser(start, (browser) => writeOne(browser, folder));
  const bare = typedByHand(said);
  const value = rounded(costOf(hands.acts).seconds);
  const share = rounded(value / costOf(bare).seconds);
  return {
    figures: [
      {
        ...{ name: "a review of six findings by keys, the hands beyond watching", value, unit: "s" },
        ...{ target: MOST_S, ok: value <= MOST_S },
      },
      {
        ...{ name: "the same against typing its words into a message", value: share, unit: "times" },
        ...{ target: 1, ok: share <= 1 },
      },
    ],
    table: tableOf(hands.acts, bare),
  };
}

async function writeOne(browser: Browser, folder: string): Promise<SixFindings> {
  const path = join(folder, "review.mp4");
  const { events } = await drawClip(clipParameters({ ageYears: 12, view: "open_side" }), path);
  const roundId = await sendRound(WHO.child.athleteId, [{ file: readFileSync(path) }]);
  const coach = await signedIn(CLIPS_COACH);
  await command(coach, "rounds.take", { roundId });
  const context = await browser.newContext({ storageState: await coach.storageState() });
  await coach.dispose();
  const page = await context.newPage();
  await page.goto(`${CLIPS_ADDRESS}/reviews/${roundId}`);
  await page.locator("input[type=range]:enabled").first().waitFor({ timeout: 60_000 });
  const { max_external_rotation: _approximate, ...moments } = events;
  const written = await writeSixFindings(page, moments);
  await context.close();
  return written;
}

const rounded = (value: number) => Math.round(value * 100) / 100;

function tableOf(ours: readonly Act[], bare: readonly Act[]): string {
  const names = Object.keys(OPERATOR_S) as Operator[];
  const times = names.map((name) => `${name} ${OPERATOR_S[name]} s`).join(", ");
  const rows = [...block("by keys, in the room", ours), ...block("typed into a message", bare)];
  return [
    `Operator time (${times}; Card, Moran and Newell 1980, 1983)`,
    `${"".padEnd(52)}${names.map((name) => name.padStart(5)).join("")}  seconds`,
    ...rows,
  ].join("\n");
}

function block(title: string, acts: readonly Act[]): string[] {
  const row = (name: string, { counts, seconds }: ReturnType<typeof costOf>) =>
    `${name.padEnd(52)}${Object.values(counts)
      .map((count) => String(count).padStart(5))
      .join("")}  ${seconds.toFixed(1).padStart(7)}`;
  return [...[...costByPart(acts)].map(([part, cost]) => row(`  ${part}`, cost)), row(title, costOf(acts))];
}
