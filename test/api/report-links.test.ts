import { createHash } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { guardianship, person } from "@/db/schema/people";
import { appRouter } from "@/server/api/root";
import { createCallerFactory } from "@/server/api/trpc";
import { type TestAcademy, WHO } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";
import { because, refuses } from "../helpers/refuses";

const SEASON = { fromOn: "2026-01-01", toOn: "2026-12-31" };
const DAY_MS = 86_400_000;

let academy: TestAcademy;
let records: Record<"child" | "teen" | "adult" | "stranger", AthleteRecord>;

beforeEach(async () => {
  ({ academy, records } = await makeBusyAcademy());
});

const viewAs = async (
  personId: string,
  athleteId: string = WHO.child.athleteId,
  span: typeof SEASON | null = null,
) => (await academy.as(personId)).seasonReports.view({ athleteId, span });

const makeLinkAs = async (
  personId: string,
  athleteId: string = WHO.child.athleteId,
  days: 7 | 30 | 90 = 7,
) => {
  const made = await (await academy.as(personId)).seasonReports.makeLink({ athleteId, ...SEASON, days });
  return { ...made, token: made.address?.split("/season/")[1] ?? "" };
};

const read = async (token: string) => (await academy.as(null)).seasonReports.shared({ token });

const acts = (action: string) =>
  academy.sqlite
    .prepare("SELECT actor_person_id AS by, subject_id AS of, facts FROM audit_log WHERE action = ?")
    .all(action) as { by: string; of: string; facts: string }[];

describe("a link to a report", () => {
  it("is made by a guardian, read by anybody, and tells a given name and an initial and no day of birth", async () => {
    const { token, expiresAtMs, address } = await makeLinkAs(WHO.guardian);
    expect(address).toMatch(/^https?:\/\/.+\/season\/[\w-]{43}$/);
    expect(expiresAtMs).toBe(academy.clock.ms + 7 * DAY_MS);
    const shared = await read(token);
    expect(shared?.athleteName).toBe("Kit M.");
    expect(shared?.report).toEqual((await viewAs(WHO.guardian)).report);
    expect(JSON.stringify(shared)).not.toMatch(/Marsh|2014-05-10|clp_|per_|ath_/);
  });

  it("is kept by its SHA-256 alone, also when the answer is kept for a repeat, which gets no address", async () => {
    const ask = { athleteId: WHO.child.athleteId, ...SEASON, days: 30 } as const;
    const requestId = "4a3f1c52-9d1e-4a57-8a2b-0c5d6e7f8091";
    const first = await (await academy.as(WHO.guardian, requestId)).seasonReports.makeLink(ask);
    const token = first.address?.split("/season/")[1] ?? "";
    expect(Buffer.from(token, "base64url")).toHaveLength(32);
    expect(academy.snapshot()).not.toContain(token);
    expect(academy.snapshot()).toContain(createHash("sha256").update(token).digest("hex"));
    const again = await (await academy.as(WHO.guardian, requestId)).seasonReports.makeLink(ask);
    expect(again).toEqual({ ...first, address: null });
    expect((await viewAs(WHO.guardian)).links).toHaveLength(2);
  });

  it("is made by an athlete of age for themselves; by no minor, no staff, no other family", async () => {
    const { token } = await makeLinkAs(WHO.adult.personId, WHO.adult.athleteId);
    expect((await read(token))?.athleteName).toBe("Sam V.");
    const ask = { athleteId: WHO.teen.athleteId, ...SEASON, days: 30 } as const;
    for (const who of [WHO.teen.personId, WHO.coach, WHO.otherCoach, WHO.admin, WHO.otherGuardian]) {
      await refuses(academy, who, (api) => api.seasonReports.makeLink(ask), because("not_found"));
    }
    await refuses(academy, null, (api) => api.seasonReports.makeLink(ask), because("not_signed_in"));
  });

  it("opens until the millisecond it expires", async () => {
    const { token, expiresAtMs } = await makeLinkAs(WHO.guardian, WHO.child.athleteId, 90);
    academy.clock.ms = expiresAtMs - 1;
    expect(await read(token)).not.toBeNull();
    academy.clock.ms = expiresAtMs;
    expect(await read(token)).toBeNull();
    const [link] = (await viewAs(WHO.guardian)).links;
    expect(link?.state).toBe("expired");
  });

  it("is ended at once by its maker, by staff, or by whoever else decides; the record knows who", async () => {
    for (const who of [WHO.guardian, WHO.coach, WHO.admin]) {
      const { token, linkId } = await makeLinkAs(WHO.guardian);
      await (await academy.as(who)).seasonReports.revokeLink({ linkId });
      expect(await read(token)).toBeNull();
      const ended = acts("report.link_revoked").find((act) => act.of === linkId);
      expect(ended).toMatchObject({ by: who });
      expect(ended?.facts).toContain(WHO.guardian);
      expect(acts("report.link_made").find((act) => act.of === linkId)).toMatchObject({ by: WHO.guardian });
    }
    const { links } = await viewAs(WHO.guardian);
    expect(links.filter(({ state }) => state === "revoked")).toHaveLength(3);
  });

  it("is ended once: a second time writes nothing, and a stranger's is not there", async () => {
    const { linkId } = await makeLinkAs(WHO.guardian);
    const guardian = await academy.as(WHO.guardian);
    await guardian.seasonReports.revokeLink({ linkId });
    const before = academy.snapshot();
    await guardian.seasonReports.revokeLink({ linkId });
    expect(academy.snapshot()).toBe(before);
    for (const who of [WHO.otherGuardian, WHO.teen.personId, WHO.adult.personId]) {
      await refuses(
        academy,
        who,
        (api) => api.seasonReports.revokeLink({ linkId: records.child.reportLink }),
        because("not_found"),
      );
    }
  });

  it("stops with the right of its maker: a guardianship that ends, an account that is disabled, a birthday", async () => {
    const { token } = await makeLinkAs(WHO.guardian, WHO.teen.athleteId, 90);
    const opens = async () => (await read(token)) !== null;
    expect(await opens()).toBe(true);
    await academy.discarding(async () => {
      await academy.db.update(guardianship).set({ endedAtMs: academy.clock.ms });
      expect(await opens()).toBe(false);
    });
    await academy.discarding(async () => {
      academy.sqlite.exec(`UPDATE account SET disabled_at_ms = 1 WHERE person_id = '${WHO.guardian}'`);
      expect(await opens()).toBe(false);
    });
    await academy.discarding(async () => {
      await academy.db.update(person).set({ erasedAtMs: academy.clock.ms });
      expect(await opens()).toBe(false);
    });
    academy.sqlite.exec(`UPDATE athlete SET born_on = '2008-11-26' WHERE id = '${WHO.teen.athleteId}'`);
    expect(await opens()).toBe(true);
    academy.clock.ms += DAY_MS;
    expect(await opens()).toBe(false);
    const [link] = (await viewAs(WHO.coach, WHO.teen.athleteId)).links;
    expect(link?.state).toBe("stopped");
  });

  it("is one of ten at most", async () => {
    for (let made = 1; made < 10; made += 1) await makeLinkAs(WHO.guardian);
    const ask = { athleteId: WHO.child.athleteId, ...SEASON, days: 7 } as const;
    await refuses(academy, WHO.guardian, (api) => api.seasonReports.makeLink(ask), because("report_invalid"));
  });

  it("is not made of a season that cannot be told of, nor for another number of days", async () => {
    const ask = {
      athleteId: WHO.child.athleteId,
      fromOn: "2025-01-01",
      toOn: "2026-12-31",
      days: 7,
    } as const;
    await refuses(
      academy,
      WHO.guardian,
      (api) => api.seasonReports.makeLink(ask),
      because("report_invalid", { why: "A report tells of a year at most." }),
    );
    const days = 365 as 7;
    await expect(
      (await academy.as(WHO.guardian)).seasonReports.makeLink({ ...ask, ...SEASON, days }),
    ).rejects.toMatchObject({ code: "BAD_REQUEST" });
  });

  it("that is guessed answers like one that has ended, and after sixty wrong ones an address waits", async () => {
    const { token } = await makeLinkAs(WHO.guardian);
    const { connections, clock } = academy;
    const from = { connections, actor: null, nowMs: clock.ms, requestId: null, address: "203.0.113.7" };
    const stranger = createCallerFactory(appRouter)(from);
    for (let tried = 0; tried < 60; tried += 1) {
      expect(await stranger.seasonReports.shared({ token: `guess-${tried}` })).toBeNull();
    }
    await expect(stranger.seasonReports.shared({ token })).rejects.toMatchObject({
      code: "TOO_MANY_REQUESTS",
    });
    expect(await read(token)).not.toBeNull();
  });
});
