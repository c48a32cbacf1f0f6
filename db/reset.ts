import { rmSync } from "node:fs";
import { env } from "../server/env";

/* Removes the database, the clips and the uploads of the data folder; the next start fills it anew. */
for (const name of [
  "slabside.sqlite",
  "slabside.sqlite-wal",
  "slabside.sqlite-shm",
  "clips",
  "uploads",
  "demo-clips.json",
]) {
  rmSync(`${env.dataFolder}/${name}`, { recursive: true, force: true });
}
console.log(`Emptied ${env.dataFolder}. npm start fills it again.`);
