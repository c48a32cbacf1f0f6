import { z } from "zod";
import { countNotices, listNotices, retryNotices } from "@/server/data/notices";
import { NOTICE_KINDS, NOTICE_STATES } from "@/server/domain/notices/notice";
import { env } from "@/server/env";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { router } from "../trpc";

const noticeId = z.string().min(1).max(60);

/** Notices on one page of the outbox. */
const PAGE_SIZE = 25;

export const noticesRouter = router({
  /** One page of the outbox, latest first, with how many stand in each state. */
  list: query({
    action: "notices.view",
    input: z.strictObject({ page: z.int().min(1).max(100_000), state: z.enum(NOTICE_STATES).nullable() }),
    output: z.strictObject({
      rows: z.array(
        z.strictObject({
          id: noticeId,
          kind: z.enum(NOTICE_KINDS),
          subject: z.string(),
          body: z.string(),
          state: z.enum(NOTICE_STATES),
          lastError: z.string().nullable(),
          createdAtMs: z.number(),
          sentAtMs: z.number().nullable(),
          toGivenName: z.string(),
          toFamilyName: z.string(),
        }),
      ),
      total: z.number(),
      pageSize: z.number(),
      counts: z.record(z.enum(NOTICE_STATES), z.number()),
      /** Whether a mail server is set; without one every notice is kept here. */
      isMailSet: z.boolean(),
    }),
    async run({ db }, { page, state }) {
      const found = await listNotices(db, { limit: PAGE_SIZE, offset: (page - 1) * PAGE_SIZE, state });
      const isMailSet = env.SMTP_URL !== undefined;
      return { ...found, pageSize: PAGE_SIZE, counts: await countNotices(db), isMailSet };
    },
  }),

  /** Puts notices that failed or were kept back in line to be sent. */
  retry: command({
    action: "notices.view",
    input: z.strictObject({ noticeIds: z.array(noticeId).min(1).max(50) }),
    output: done,
    async run(scope, { noticeIds }) {
      await retryNotices(scope.db, noticeIds, scope.nowMs);
      await noteAct(scope, "notices.retried", noticeIds[0] ?? "", { notices: noticeIds.length });
      return DONE;
    },
  }),
});
