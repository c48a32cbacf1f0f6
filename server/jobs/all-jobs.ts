import { nowMs } from "@/server/clock";
import { connections } from "@/server/data/connections";
import { dropGivenAnswersBefore } from "@/server/data/given-answers";
import { unitOfWork } from "@/server/data/unit-of-work";
import { env } from "@/server/env";
import { clipsFolder, reserveSet } from "@/server/media/media-folders";
import { converterPath } from "@/server/media/run-converter";
import { mailIsSet, sendMail } from "@/server/notices/mailer";
import { convertClips } from "./convert-clips";
import { drawDemoClips } from "./draw-demo-clips";
import { expireClips } from "./expire-clips";
import type { Job } from "./job-loop";
import { lapseRounds } from "./lapse-rounds";
import { sendNotices } from "./send-notices";

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/** Everything this process does by itself. */
export function allJobs(): Job[] {
  const on = connections(env.databasePath);
  return [
    {
      name: "send-notices",
      everyMs: 5000,
      run: () => sendNotices(on, nowMs(), { isSet: mailIsSet(), send: sendMail }),
    },
    {
      name: "drop-given-answers",
      everyMs: DAY_MS / 4,
      run: () => unitOfWork(on, (tx) => dropGivenAnswersBefore(tx, nowMs() - 7 * DAY_MS)),
    },
    { name: "lapse-rounds", everyMs: HOUR_MS / 6, run: () => lapseRounds(on, nowMs()) },
    { name: "expire-clips", everyMs: HOUR_MS, run: () => expireClips(on, nowMs()) },
    {
      name: "convert-clips",
      everyMs: 5000,
      run: async () => {
        const program = await converterPath(env.PATH);
        const converter = program === null ? null : { program };
        await convertClips(on, { clipsFolder: clipsFolder(), converter, reserve: reserveSet() });
      },
    },
    {
      name: "draw-demo-clips",
      everyMs: 60_000,
      run: () => drawDemoClips(on, { dataFolder: env.dataFolder, clipsFolder: `${env.dataFolder}/clips` }),
    },
  ];
}
