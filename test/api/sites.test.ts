import { describe, expect, it } from "vitest";
import { makeAcademy, TEST_NOW_MS, WHO } from "../helpers/academy";
import { bookSession } from "../helpers/book-session";
import { because, type Caller, refuses } from "../helpers/refuses";

describe("sites and lanes", () => {
  const north = { siteId: WHO.site, name: "North site", zone: "America/New_York", address: "1 Mill Lane" };

  it("are added with a week, a closed day and a lane", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const { siteId } = await admin.sites.add({ name: "South", zone: "America/Phoenix", address: "" });
    await admin.sites.setWeek({ siteId, week: [{ weekday: 2, opensMin: 600, closesMin: 1440 }] });
    await admin.sites.addLane({ siteId, name: "Lane 1", kind: "mound" });
    expect(await admin.sites.close({ siteId, closedOn: "2026-12-25", reason: "Holiday" })).toEqual({
      bookedSessions: 0,
    });
    const south = (await admin.sites.list({})).find((each) => each.siteId === siteId);
    expect(south).toMatchObject({
      week: [{ weekday: 2, opensMin: 600, closesMin: 1440 }],
      closures: [{ closedOn: "2026-12-25", reason: "Holiday" }],
      lanes: [{ name: "Lane 1", kind: "mound", isRetired: false }],
    });
    await admin.sites.reopen({ closureId: south?.closures[0]?.closureId ?? "" });
    expect((await admin.sites.list({})).find((each) => each.siteId === siteId)?.closures).toEqual([]);
  });

  it("refuse hours that overlap, and keep the week as it was", async () => {
    const academy = await makeAcademy();
    const week = [
      { weekday: 1, opensMin: 600, closesMin: 800 },
      { weekday: 1, opensMin: 799, closesMin: 900 },
    ];
    const set = (api: Caller) => api.sites.setWeek({ siteId: WHO.site, week });
    await refuses(academy, WHO.admin, set, because("hours_invalid"));
  });

  it("say how many sessions are booked on a day that is closed", async () => {
    const academy = await makeAcademy();
    await bookSession(academy, Date.UTC(2026, 11, 2, 4, 30));
    const admin = await academy.as(WHO.admin);
    const onTheEve = { siteId: WHO.site, closedOn: "2026-12-01", reason: "Storm" };
    expect(await admin.sites.close(onTheEve)).toEqual({ bookedSessions: 1 });
    expect(await admin.sites.close({ ...onTheEve, closedOn: "2026-12-03" })).toEqual({ bookedSessions: 0 });
  });

  it("stay while something is booked on them, and cannot change their clock then", async () => {
    const academy = await makeAcademy();
    await bookSession(academy, TEST_NOW_MS + 86_400_000);
    const lanes = (api: Caller) => api.sites.retireLane({ laneId: WHO.moundLane });
    await refuses(academy, WHO.admin, lanes, because("in_use", { what: "Lane 1" }));
    await refuses(academy, WHO.admin, (api) => api.sites.retire({ siteId: WHO.site }), because("in_use"));
    const moved = { ...north, zone: "America/Chicago" };
    await refuses(academy, WHO.admin, (api) => api.sites.edit(moved), because("settings_invalid"));
    const admin = await academy.as(WHO.admin);
    await admin.sites.edit({ ...north, name: "North hall" });
    await admin.sites.retireLane({ laneId: WHO.flatLane });
    const [card] = await admin.sites.list({});
    expect(card?.name).toBe("North hall");
    expect(card?.lanes.map((each) => each.isRetired)).toEqual([false, false, true]);
  });

  it("retire once nobody trains there", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const { siteId } = await admin.sites.add({ name: "South", zone: "America/Phoenix", address: "" });
    await admin.sites.retire({ siteId });
    await refuses(academy, WHO.admin, (api) => api.sites.retire({ siteId }), because("not_found"));
    await refuses(
      academy,
      WHO.admin,
      (api) => api.sites.addLane({ siteId, name: "Lane", kind: "flat" }),
      because("not_found"),
    );
  });
});
