import { spawnSync } from "node:child_process";
import { home } from "../../server/start/run-command.mjs";
import { say, stop } from "../../server/start/say.mjs";

/* A cruise that read nothing passes on nothing: the count is asserted as well. */
const run = spawnSync(
  process.execPath,
  [
    "node_modules/dependency-cruiser/bin/dependency-cruise.mjs",
    "--config",
    "test/dependency-cruiser.cjs",
    "--output-type",
    "json",
    "app",
    "components",
    "server",
    "db",
    "seed",
    "test",
  ],
  { cwd: home, encoding: "utf8", maxBuffer: 1 << 28 },
);
const { summary } = JSON.parse(run.stdout || '{"summary":null}');
if (!summary) stop(`The import rules could not be checked. ${run.stderr}`);
for (const { rule, from, to } of summary.violations) say(`${rule.severity} ${rule.name}: ${from} -> ${to}`);
if (summary.totalCruised < 100)
  stop(`Only ${summary.totalCruised} modules were read: the cruise does not see the sources.`);
if (summary.error > 0) stop(`${summary.error} imports break the rules of docs/architecture.md.`);
say(`${summary.totalCruised} modules, no import out of place.`);
