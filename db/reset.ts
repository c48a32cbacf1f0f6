import { rmSync } from "node:fs";
import { env } from "../server/env";

/* Removes the academy from the data folder, and what kind it was; the next start decides anew. The secret stays. */
for (const name of [
  "slabside.sqlite",
  "slabside.sqlite-wal",
  "slabside.sqlite-shm",
  "clips",
  "uploads",
  "demo-clips.json",
  "demo-orders.json",
  "academy.txt",
]) {
  rmSync(`${env.dataFolder}/${name}`, { recursive: true, force: true });
}
console.log(
  `Emptied ${env.dataFolder}. npm start fills it with the demo again, npm start -- --empty begins an academy of your own.`,
);
