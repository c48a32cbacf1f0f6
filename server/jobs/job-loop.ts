import { logFault } from "@/server/log-fault";

/** Something done again and again, one run at a time. */
export interface Job {
  name: string;
  everyMs: number;
  run: () => Promise<void>;
}

const held = globalThis as unknown as { slabsideJobs?: boolean };

/**
 * Starts each job now and then `everyMs` after its last run ended. A run that fails is logged and tried again at its
 * next turn. Started once a process, however often this is called.
 */
export function startJobs(jobs: readonly Job[]): void {
  if (held.slabsideJobs) return;
  held.slabsideJobs = true;
  for (const job of jobs) void keepRunning(job);
}

async function keepRunning(job: Job): Promise<void> {
  while (true) {
    try {
      await job.run();
    } catch (error) {
      logFault(error, { job: job.name }, "a job failed");
    }
    await new Promise<void>((wait) => setTimeout(wait, job.everyMs).unref());
  }
}
