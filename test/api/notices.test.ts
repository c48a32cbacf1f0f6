import { describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import type { NoticeState } from "@/server/domain/notices/notice";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";

async function withNotices(states: readonly NoticeState[]) {
  const academy = await makeAcademy();
  for (const [index, state] of states.entries()) await addNotice(academy, `ntc_${index}`, state, index);
  return academy;
}

async function addNotice(academy: TestAcademy, id: string, state: NoticeState, index: number) {
  const createdAtMs = academy.clock.ms + index;
  await academy.db.insert(notice).values({
    id,
    kind: "reset",
    toPersonId: WHO.guardian,
    subject: `Notice ${index}`,
    body: "A link",
    state,
    attempts: state === "failed" ? 8 : 0,
    nextTryAtMs: createdAtMs,
    createdAtMs,
  });
}

describe("the outbox", () => {
  it("is read latest first, page by page and by state, with how many stand in each", async () => {
    const academy = await withNotices([...Array<NoticeState>(26).fill("kept"), "failed"]);
    const admin = await academy.as(WHO.admin);
    const first = await admin.notices.list({ page: 1, state: null });
    expect(first.rows.map((row) => row.subject).slice(0, 2)).toEqual(["Notice 26", "Notice 25"]);
    expect(first).toMatchObject({ total: 27, pageSize: 25, isMailSet: false });
    expect(first.counts).toEqual({ waiting: 0, sent: 0, kept: 26, failed: 1 });
    expect((await admin.notices.list({ page: 2, state: null })).rows).toHaveLength(2);
    expect((await admin.notices.list({ page: 1, state: "failed" })).total).toBe(1);
  });

  it("puts back in line what failed or was kept, and leaves alone what was sent", async () => {
    const academy = await withNotices(["failed", "kept", "sent"]);
    const admin = await academy.as(WHO.admin);
    await admin.notices.retry({ noticeIds: ["ntc_0", "ntc_1", "ntc_2", "ntc_none"] });
    const rows = await academy.db.select().from(notice);
    expect(rows.map((row) => [row.state, row.attempts])).toEqual([
      ["waiting", 0],
      ["waiting", 0],
      ["sent", 0],
    ]);
  });

  it.each([
    ["a coach", WHO.coach, "NOT_FOUND"],
    ["the one it went to", WHO.guardian, "NOT_FOUND"],
    ["nobody", null, "UNAUTHORIZED"],
  ])("turns away %s, and writes nothing", async (_, personId, code) => {
    const academy = await withNotices(["failed"]);
    const api = await academy.as(personId);
    const before = academy.snapshot();
    await expect(api.notices.list({ page: 1, state: null })).rejects.toMatchObject({ code });
    await expect(api.notices.retry({ noticeIds: ["ntc_0"] })).rejects.toMatchObject({ code });
    expect(academy.snapshot()).toBe(before);
  });
});
