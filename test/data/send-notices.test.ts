import { describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { tellFamily } from "@/server/data/notices";
import { type Outlet, sendNotices } from "@/server/jobs/send-notices";
import type { Mail } from "@/server/notices/mailer";
import { makeAcademy, WHO } from "../helpers/academy";

const TEXT = { kind: "review_sent", subject: "A review is in", body: "Read it." } as const;

async function withNotice(athleteId: string = WHO.child.athleteId) {
  const academy = await makeAcademy();
  await tellFamily(academy.db, athleteId, TEXT, academy.clock.ms);
  return academy;
}

function outlet(fails = false): Outlet & { sent: Mail[] } {
  const sent: Mail[] = [];
  return {
    isSet: true,
    sent,
    send: async (mail) => {
      if (fails) throw new Error("421 try later");
      sent.push(mail);
    },
  };
}

describe("the outbox", () => {
  it("tells a guardian for a child who has no sign-in, and both for a minor of 13 and over", async () => {
    const child = await withNotice();
    expect((await child.db.select().from(notice)).map((row) => row.toPersonId)).toEqual([WHO.guardian]);
    const teen = await withNotice(WHO.teen.athleteId);
    expect((await teen.db.select().from(notice)).map((row) => row.toPersonId).sort()).toEqual(
      [WHO.guardian, WHO.teen.personId].sort(),
    );
  });

  it("tells nobody rather than a minor alone", async () => {
    const academy = await makeAcademy();
    academy.sqlite.exec("UPDATE guardianship SET ended_at_ms = 1");
    await tellFamily(academy.db, WHO.teen.athleteId, TEXT, academy.clock.ms);
    expect(await academy.db.select().from(notice)).toEqual([]);
  });

  it("sends once and says when", async () => {
    const academy = await withNotice();
    const out = outlet();
    await sendNotices(academy.connections, academy.clock.ms, out);
    await sendNotices(academy.connections, academy.clock.ms, out);
    expect(out.sent).toHaveLength(1);
    expect((await academy.db.select().from(notice))[0]).toMatchObject({
      state: "sent",
      sentAtMs: academy.clock.ms,
    });
  });

  it("sends a single-use link whole and keeps the notice without it", async () => {
    const academy = await makeAcademy();
    await (await academy.as(WHO.admin)).invitations.send({ personId: WHO.guardian });
    const out = outlet();
    await sendNotices(academy.connections, academy.clock.ms, out);
    const [token = ""] = /\/join\/([\w-]{43})\n/.exec(out.sent[0]?.text ?? "")?.slice(1) ?? [];
    expect(await (await academy.as(null)).account.link({ token })).toMatchObject({ purpose: "invitation" });
    expect((await academy.db.select().from(notice))[0]?.body).toContain("(the link went with the mail)");
    expect(academy.snapshot()).not.toContain(token);
  });

  it("keeps a notice for an admin to read when no mail server is set", async () => {
    const academy = await withNotice();
    await sendNotices(academy.connections, academy.clock.ms, { isSet: false, send: async () => undefined });
    expect((await academy.db.select().from(notice))[0]?.state).toBe("kept");
  });

  it("tries a failing one again later and later, and leaves it failed after eight tries", async () => {
    const academy = await withNotice();
    const out = outlet(true);
    const waits: number[] = [];
    for (let tries = 0; tries < 8; tries += 1) {
      await sendNotices(academy.connections, academy.clock.ms, out);
      const [row] = await academy.db.select().from(notice);
      waits.push(((row?.nextTryAtMs ?? 0) - academy.clock.ms) / 60_000);
      academy.clock.ms = row?.nextTryAtMs ?? 0;
    }
    expect(waits).toEqual([1, 2, 4, 8, 16, 32, 64, 0]);
    expect((await academy.db.select().from(notice))[0]).toMatchObject({
      state: "failed",
      lastError: "421 try later",
    });
  });
});
