import { readFileSync } from "node:fs";
import { env } from "./env";

/** The time in epoch milliseconds: the machine's, or the one in `CLOCK_FILE` that tests move by hand. */
export function nowMs(): number {
  if (!env.CLOCK_FILE) return Date.now();
  return Number(readFileSync(/* turbopackIgnore: true */ env.CLOCK_FILE, "utf8"));
}
