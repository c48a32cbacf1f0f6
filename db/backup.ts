import { cpSync, existsSync, mkdirSync } from "node:fs";
import { env } from "../server/env";
import { assertGuards, openSqlite } from "./client";
import { Sqlite } from "./driver";

/* Copies the academy into a new folder, beside a running server too, and reads the copy through: the database first, so
 * that every film it knows is copied after it. */
const folder = process.argv[2];
if (!folder) stop("Name the folder to copy into: npm run db:backup -- my-backup");
else if (existsSync(folder)) stop(`${folder} is there already. Nothing was copied. Name a new folder.`);
else if (!existsSync(env.databasePath)) stop(`There is no academy in ${env.dataFolder}. Nothing was copied.`);
else backUp(folder);

function backUp(into: string) {
  mkdirSync(into, { recursive: true });
  const copy = `${into}/slabside.sqlite`;
  const live = new Sqlite(env.databasePath, { readonly: true });
  live.prepare("VACUUM INTO ?").run(copy);
  live.close();
  for (const name of ["clips", "auth-secret", "academy.txt"]) {
    if (existsSync(`${env.dataFolder}/${name}`)) {
      cpSync(`${env.dataFolder}/${name}`, `${into}/${name}`, { recursive: true, preserveTimestamps: true });
    }
  }
  const sqlite = openSqlite(copy);
  assertGuards(sqlite);
  const integrity = sqlite.pragma("integrity_check", { simple: true });
  const broken = sqlite.pragma("foreign_key_check") as unknown[];
  sqlite.close();
  if (integrity !== "ok" || broken.length > 0) stop(`The copy in ${into} is damaged: ${String(integrity)}.`);
  else console.log(`Copied to ${into} and read through: whole.`);
}

function stop(sentence: string) {
  console.error(sentence);
  process.exitCode = 1;
}
