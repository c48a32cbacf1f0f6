import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { rate } from "@/db/schema/ledger";
import { auditLog } from "@/db/schema/people";
import { lane } from "@/db/schema/sites";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { STARTING_SETTINGS } from "@/server/domain/people/academy-settings";
import { makeAcademy, WHO } from "../helpers/academy";
import { because, type Caller, refuses } from "../helpers/refuses";

describe("the settings", () => {
  const settings = { ...STARTING_SETTINGS, name: "Test academy", promiseAmount: 3 };

  it("are saved over the version they were read at, and never over somebody else's", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const { version } = await admin.academy.settings({});
    await admin.academy.saveSettings({ settings, version });
    expect((await admin.academy.settings({})).settings.promiseAmount).toBe(3);
    const late = (api: Caller) => api.academy.saveSettings({ settings, version });
    await refuses(academy, WHO.admin, late, { code: "CONFLICT", ...because("changed_meanwhile") });
  });

  it("keep their currency once there are prices", async () => {
    const academy = await makeAcademy();
    const inEuro = { settings: { ...settings, currency: "EUR" }, version: 1 };
    const change = (api: Caller) => api.academy.saveSettings(inEuro);
    await refuses(academy, WHO.admin, change, because("settings_invalid"));
    await academy.db.delete(rate);
    await (await academy.as(WHO.admin)).academy.saveSettings(inEuro);
  });

  it("say what is still missing", async () => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    expect((await coach.academy.overview({})).missing).toEqual([]);
    await academy.db.update(lane).set({ retiredAtMs: 1 });
    expect((await coach.academy.overview({})).missing).toEqual(["lanes"]);
  });
});

describe("the record", () => {
  it("names who did what, and shows a row that was tampered with", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    await admin.sites.add({ name: "South", zone: "America/Phoenix", address: "" });
    await admin.people.grantRole({ personId: WHO.coach, role: "admin" });
    const record = await admin.academy.record({ page: 1 });
    expect(record.firstBroken).toBeNull();
    expect(record.rows.map((row) => [row.action, row.actorName, row.subjectName])).toEqual([
      ["role.granted", "Ada Frost", "Cole Rivers"],
      ["site.added", "Ada Frost", "South"],
    ]);
    academy.sqlite.exec("DROP TRIGGER audit_log_append_only_update");
    await academy.db.update(auditLog).set({ facts: '{"zone":"UTC"}' }).where(eq(auditLog.sequence, 1));
    expect((await admin.academy.record({ page: 1 })).firstBroken).toBe(1);
  });
});

describe("who is turned away from the academy's settings", () => {
  const acts: [string, (api: Caller) => Promise<unknown>][] = [
    ["academy.saveSettings", (api) => api.academy.saveSettings({ settings: STARTING_SETTINGS, version: 1 })],
    ["academy.record", (api) => api.academy.record({ page: 1 })],
    ["sites.add", (api) => api.sites.add({ name: "South", zone: "America/Phoenix", address: "" })],
    ["sites.setWeek", (api) => api.sites.setWeek({ siteId: WHO.site, week: [] })],
    [
      "sites.close",
      (api) => api.sites.close({ siteId: WHO.site, closedOn: "2026-12-25", reason: "Holiday" }),
    ],
    ["sites.retireLane", (api) => api.sites.retireLane({ laneId: WHO.flatLane })],
    ["hours.setWeek", (api) => api.hours.setWeek({ coachPersonId: WHO.coach, week: [] })],
    [
      "rates.setPrice",
      (api) => api.rates.setPrice({ kind: "lesson", priceCents: 1, effectiveFrom: "2027-01-01" }),
    ],
    [
      "checkpoints.setActive",
      (api) => api.checkpoints.setActive({ id: "balanced-finish", version: 1, active: false }),
    ],
  ];

  it.each(acts)("%s turns away coach, guardian, athlete and nobody, and writes nothing", async (_, act) => {
    const academy = await makeAcademy();
    for (const personId of [WHO.coach, WHO.guardian, WHO.adult.personId]) {
      await refuses(academy, personId, act, { code: "NOT_FOUND" });
    }
    await refuses(academy, null, act, { code: "UNAUTHORIZED" });
  });

  it("coaches read what they work by, families do not", async () => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    expect((await coach.sites.list({}))[0]?.week).toHaveLength(6);
    expect(await coach.hours.list({})).toHaveLength(2);
    expect(await coach.checkpoints.list({})).toHaveLength(STARTING_LIBRARY.length);
    expect((await coach.academy.settings({})).settings.name).toBe("Test academy");
    const guardian = await academy.as(WHO.guardian);
    await expect(guardian.sites.list({})).rejects.toMatchObject({ code: "NOT_FOUND" });
    await expect(guardian.academy.overview({})).rejects.toMatchObject({ code: "NOT_FOUND" });
  });
});
