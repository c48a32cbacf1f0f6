/** The test command: installs, then runs every check, and ends with one line that counts tests. A word runs one part: check, unit, e2e. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { checkNode } from "../server/start/checks.mjs";
import { buildIfNeeded, installPackages } from "../server/start/prepare.mjs";
import { runCommand } from "../server/start/run-command.mjs";
import { say } from "../server/start/say.mjs";
import { ownChromium, systemChromium } from "./run/chromium.mjs";

/* On either side of Greenwich, one a half hour off: nothing may hang on the zone of the machine. */
const EAST = "Pacific/Auckland";
const WEST = "America/St_Johns";
const part = process.argv[2] ?? "all";
const rest = process.argv.slice(3);
const reports = mkdtempSync(join(tmpdir(), "slabside-tests-"));
const counted = { passed: 0, failed: 0, skipped: 0 };
/** What failed, to be said again at the end: the head of a long run is the first thing to be cut off. */
const failures = [];

checkNode();
/* What waits on the network and what one core compiles goes on beside the rest. */
const chromiumThere = part === "all" || part === "e2e" ? systemChromium() : null;
const { driver } = await installPackages();
if (part === "all" || part === "check") await check();
await driver;
if (part === "all" || part === "unit") await unit();
if (part === "all" || part === "e2e") await browser();
rmSync(reports, { recursive: true, force: true });

for (const failure of failures) say(failure);
if (part === "check") say("Checks passed.");
else say(`${counted.passed} passed, ${counted.failed} failed, ${counted.skipped} skipped`);
process.exit(counted.failed > 0 ? 1 : 0);

async function check() {
  await must("Format and lint", "node_modules/@biomejs/biome/bin/biome", ["check", "."]);
  await must("Route types", "node_modules/next/dist/bin/next", ["typegen"]);
  await must("Types", "node_modules/typescript/bin/tsc", ["--noEmit"]);
  await must("Import rules", "test/run/import-rules.mjs", []);
}

async function unit() {
  if (rest.length > 0) return vitest("Unit and API tests", {}, rest);
  await vitest(`Unit and API tests in ${EAST}`, { TZ: EAST }, []);
  await vitest(`The same in ${WEST}`, { TZ: WEST }, [
    "test/domain",
    "test/data",
    "test/api",
    "test/components",
  ]);
}

async function vitest(title, environment, words) {
  say(`\n== ${title}`);
  const report = join(reports, `vitest-${counted.passed}.json`);
  const { code } = await runCommand(
    process.execPath,
    [
      "node_modules/vitest/vitest.mjs",
      "run",
      "--config",
      "test/vitest.config.ts",
      "--reporter=dot",
      "--reporter=json",
      `--outputFile.json=${report}`,
      ...words,
    ],
    { environment },
  );
  count(code, () => {
    const told = JSON.parse(readFileSync(report, "utf8"));
    for (const file of told.testResults) {
      if (file.message)
        failures.push(`Failed: ${relative(process.cwd(), file.name)}: ${headOf(file.message)}`);
      for (const { status, fullName, failureMessages } of file.assertionResults)
        if (status === "failed")
          failures.push(`Failed: ${fullName} (${title})\n${headOf(failureMessages[0])}`);
    }
    return { passed: told.numPassedTests, failed: told.numFailedTests, skipped: told.numPendingTests };
  });
}

async function browser() {
  const chromium = (await chromiumThere) ?? (await ownChromium());
  say("\n== Production build");
  await buildIfNeeded();
  say("\n== Browser journeys");
  const report = join(reports, "playwright.json");
  const { code } = await runCommand(
    process.execPath,
    ["node_modules/@playwright/test/cli.js", "test", "--config", "test/playwright.config.ts", ...rest],
    { environment: { CHROMIUM_PATH: chromium, PLAYWRIGHT_JSON_OUTPUT_NAME: report } },
  );
  count(code, () => {
    const { stats } = JSON.parse(readFileSync(report, "utf8"));
    return { passed: stats.expected, failed: stats.unexpected + stats.flaky, skipped: stats.skipped };
  });
}

/** The first lines of what a test said, which hold the counterexample of a property. */
function headOf(message) {
  const lines = (message ?? "").split("\n").filter((line) => !line.startsWith("    at "));
  return lines.slice(0, 12).join("\n").trimEnd();
}

/** Adds what a runner reported; a runner that failed without counting anything counts as one failure. */
function count(code, read) {
  let told = { passed: 0, failed: 0, skipped: 0 };
  try {
    told = read();
  } catch {
    /* No report: the exit code speaks. */
  }
  counted.passed += told.passed;
  counted.skipped += told.skipped;
  counted.failed += told.failed || (code === 0 && told.passed > 0 ? 0 : 1);
}

async function must(title, script, words) {
  say(`\n== ${title}`);
  const { code } = await runCommand(process.execPath, [script, ...words]);
  if (code === 0) return;
  say(`${title}: failed.`);
  say("0 passed, 1 failed, 0 skipped");
  process.exit(1);
}
