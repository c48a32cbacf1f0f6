import type { Connections, Db } from "@/db/client";

const queues = new WeakMap<Connections, Promise<unknown>>();

/**
 * The only way to write: one at a time in this process, `BEGIN IMMEDIATE` against others, committed when `work`
 * resolves, rolled back when it throws. Inside, nothing but the database is awaited: mail, files and other services go
 * through the outbox and jobs.
 * @throws whatever `work` throws, after the rollback
 */
export function unitOfWork<Result>(on: Connections, work: (tx: Db) => Promise<Result>): Promise<Result> {
  const run = (queues.get(on) ?? Promise.resolve()).then(() => runOne(on, work));
  queues.set(
    on,
    run.catch(() => undefined),
  );
  return run;
}

async function runOne<Result>(on: Connections, work: (tx: Db) => Promise<Result>): Promise<Result> {
  on.execute("BEGIN IMMEDIATE");
  try {
    const result = await work(on.writer);
    on.execute("COMMIT");
    return result;
  } catch (error) {
    if (on.inTransaction()) on.execute("ROLLBACK");
    throw error;
  }
}
