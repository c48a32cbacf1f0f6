/**
 * Writes the next migration from the schema and completes what the generator cannot write: STRICT on every new table,
 * and, in the first migration or with `--guards`, the guard triggers. A landed migration is never edited again.
 */
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { GUARD_TRIGGERS } from "./guards";

const folder = fileURLToPath(new URL("./migrations/", import.meta.url));
const list = () => {
  try {
    return readdirSync(folder).filter((name) => name.endsWith(".sql"));
  } catch {
    return [];
  }
};

const before = new Set(list());
const passed = process.argv.slice(2).filter((word) => word !== "--guards");
const run = spawnSync("npx", ["drizzle-kit", "generate", "--config=db/drizzle.config.ts", ...passed], {
  stdio: "inherit",
});
if (run.status !== 0) process.exit(run.status ?? 1);

for (const name of list().filter((file) => !before.has(file))) {
  const path = `${folder}${name}`;
  let sql = readFileSync(path, "utf8").replaceAll(/^\);$/gm, ") STRICT;").replaceAll(/^\)$/gm, ") STRICT");
  sql = sql.replaceAll(/^\);(?=--> statement-breakpoint)/gm, ") STRICT;");
  if (before.size === 0 || process.argv.includes("--guards")) {
    const guards = GUARD_TRIGGERS.map((guard) => `${guard.sql};`).join("\n--> statement-breakpoint\n");
    sql = `${sql.trimEnd()}\n--> statement-breakpoint\n${guards}\n`;
  }
  writeFileSync(path, sql);
  console.log(`Completed ${name}: STRICT tables${before.size === 0 ? " and guards" : ""}.`);
}
