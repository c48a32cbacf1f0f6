import { assertGuards, openSqlite } from "@/db/client";
import { env } from "./env";
import { allJobs } from "./jobs/all-jobs";
import { startJobs } from "./jobs/job-loop";
import { log } from "./log";

/**
 * Checks the database's settings and guards, and starts the jobs.
 * @throws Error naming what is missing; the server must not go on without it
 */
export function bootServer(): void {
  const sqlite = openSqlite(env.databasePath);
  try {
    assertGuards(sqlite);
  } finally {
    sqlite.close();
  }
  if (env.CLOCK_FILE) log.warn({ file: env.CLOCK_FILE }, "the clock is read from a file; for tests only");
  startJobs(allJobs());
}
