/** The long tests of the review room in a real browser: a thousand steps of each kind on each clip, and twenty thousand random acts. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildIfNeeded } from "../../server/start/prepare.mjs";
import { runCommand } from "../../server/start/run-command.mjs";
import { findChromium } from "../run/chromium.mjs";

const chromium = await findChromium();
await buildIfNeeded();
/* These journeys bring an academy of their own: the demo need not be started, nor its clips drawn meanwhile. */
const folder = mkdtempSync(join(tmpdir(), "slabside-soak-"));
const specs = process.argv.length > 2 ? process.argv.slice(2) : ["frames", "room-chaos"];
const { code } = await runCommand(
  process.execPath,
  ["node_modules/@playwright/test/cli.js", "test", "--config", "test/playwright.config.ts", ...specs],
  {
    environment: {
      CHROMIUM_PATH: chromium,
      SLABSIDE_E2E_FOLDER: folder,
      FRAME_STEPS: process.env.FRAME_STEPS ?? "1000",
      CHAOS_ACTS: process.env.CHAOS_ACTS ?? "20000",
    },
  },
);
rmSync(folder, { recursive: true, force: true });
process.exitCode = code;
