import { defineConfig } from "@playwright/test";

const chromium = process.env.CHROMIUM_PATH;

/** Those that look at clips in an academy of their own. */
const CLIPS =
  /(damaged-clips|frames|frames-held|measuring|room-chaos|seeing|time-base|voice|voice-unsent|whole-review)\.spec\.ts$/;

/** Two lines side by side, each one after the other: within a line the journeys share an academy and its clock. */
export default defineConfig({
  testDir: "./e2e",
  outputDir: "../test-results",
  workers: 2,
  projects: [
    { name: "journeys", testIgnore: CLIPS, workers: 1 },
    { name: "clips", testMatch: CLIPS, workers: 1 },
  ],
  fullyParallel: false,
  retries: 0,
  timeout: 180_000,
  expect: { timeout: 15_000 },
  globalSetup: "./e2e/start-academy.ts",
  reporter: process.env.PLAYWRIGHT_JSON_OUTPUT_NAME ? [["list"], ["json"]] : [["list"]],
  use: {
    baseURL: "http://localhost:3977",
    actionTimeout: 20_000,
    navigationTimeout: 60_000,
    /* A recording takes a third of the time; `npm run test:e2e -- --trace on` makes one. */
    trace: "off",
    screenshot: "only-on-failure",
    locale: "en-GB",
    timezoneId: "America/New_York",
    launchOptions: {
      ...(chromium ? { executablePath: chromium } : {}),
      args: [
        "--no-sandbox",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
      ],
    },
  },
});
