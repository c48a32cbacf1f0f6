import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { consent, guardianship } from "@/db/schema/people";
import { consentIsLive } from "@/server/data/consents";
import { makeAcademy, WHO } from "../helpers/academy";

const { athleteId } = WHO.teen;

describe("consent to video", () => {
  it("is withdrawn and given again as new rows; the coach and the whole family are told each time", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await guardian.consent.decide({ athleteId, kind: "withdrawn" });
    expect(await consentIsLive(academy.db, athleteId, "video")).toBe(false);
    academy.clock.ms += 1000;
    await (await academy.as(WHO.guardian)).consent.decide({ athleteId, kind: "given" });
    const rows = await academy.db.select().from(consent).where(eq(consent.athleteId, athleteId));
    expect(rows.map((row) => row.kind).sort()).toEqual(["given", "given", "withdrawn"]);
    const state = await guardian.consent.state({ athleteId });
    expect(state).toMatchObject({ isLive: true, mayDecide: true, mayGrant: false, isOfAge: false });
    expect(state.history.map((row) => [row.kind, row.byName])).toEqual([
      ["given", "Gwen Marsh"],
      ["withdrawn", "Gwen Marsh"],
      ["given", "Gwen Marsh"],
    ]);
    const told = await academy.db.select().from(notice);
    expect(told.map((row) => row.toPersonId).sort()).toEqual(
      [WHO.coach, WHO.coach, WHO.guardian, WHO.guardian, WHO.teen.personId, WHO.teen.personId].sort(),
    );
  });

  it("writes nothing when it is decided the same way again", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const before = academy.snapshot();
    await guardian.consent.decide({ athleteId, kind: "given" });
    expect(academy.snapshot()).toBe(before);
  });

  it("cannot be rewritten in the database", async () => {
    const academy = await makeAcademy();
    expect(() => academy.sqlite.exec("UPDATE consent SET kind = 'withdrawn'")).toThrow("consent_append_only");
    expect(() => academy.sqlite.exec("DELETE FROM consent")).toThrow("consent_append_only");
  });

  it.each([
    ["the minor", WHO.teen.personId, "NOT_FOUND"],
    ["the coach", WHO.coach, "NOT_FOUND"],
    ["an admin", WHO.admin, "NOT_FOUND"],
    ["another family", WHO.otherGuardian, "NOT_FOUND"],
    ["nobody", null, "UNAUTHORIZED"],
  ])("is not for %s to decide", async (_, personId, code) => {
    const academy = await makeAcademy();
    const before = academy.snapshot();
    const api = await academy.as(personId);
    await expect(api.consent.decide({ athleteId, kind: "withdrawn" })).rejects.toMatchObject({ code });
    expect(academy.snapshot()).toBe(before);
  });

  it("is decided by an athlete of 18 alone", async () => {
    const academy = await makeAcademy();
    const own = { athleteId: WHO.adult.athleteId };
    const adult = await academy.as(WHO.adult.personId);
    await adult.consent.decide({ ...own, kind: "withdrawn" });
    expect((await adult.consent.state(own)).isLive).toBe(false);
  });

  it("shows staff the state and not who decided; a minor sees it and decides nothing", async () => {
    const academy = await makeAcademy();
    for (const personId of [WHO.coach, WHO.otherCoach, WHO.admin]) {
      const seen = await (await academy.as(personId)).consent.state({ athleteId });
      expect(seen).toMatchObject({ isLive: true, mayDecide: false, history: [], guardianNames: [] });
    }
    const teen = await (await academy.as(WHO.teen.personId)).consent.state({ athleteId });
    expect(teen).toMatchObject({ mayDecide: false, guardianNames: ["Gwen Marsh"] });
  });

  it("answers another family like an athlete who is not there", async () => {
    const academy = await makeAcademy();
    const other = await academy.as(WHO.otherGuardian);
    const foreign = await other.consent.state({ athleteId }).catch((error: Error) => error.message);
    const missing = await other.consent
      .state({ athleteId: "ath_none" })
      .catch((error: Error) => error.message);
    expect(foreign).toBe(missing);
  });
});

describe("a guardian's view of an athlete of age", () => {
  it("is granted and ended by the athlete alone", async () => {
    const academy = await makeAcademy();
    const own = { athleteId: WHO.adult.athleteId };
    for (const personId of [WHO.admin, WHO.coach, WHO.guardian]) {
      const before = academy.snapshot();
      const api = await academy.as(personId);
      await expect(api.consent.grantGuardians({ ...own, grants: true })).rejects.toMatchObject({
        code: "NOT_FOUND",
      });
      expect(academy.snapshot()).toBe(before);
    }
    const adult = await academy.as(WHO.adult.personId);
    await adult.consent.grantGuardians({ ...own, grants: true });
    expect(await adult.consent.state(own)).toMatchObject({ mayGrant: true, grantsGuardians: true });
    await adult.consent.grantGuardians({ ...own, grants: false });
    expect((await adult.consent.state(own)).grantsGuardians).toBe(false);
  });

  it("lets them see, and leaves every decision to the athlete", async () => {
    const academy = await makeAcademy();
    const { athleteId: adultId } = WHO.adult;
    const standsFor = { guardianPersonId: WHO.otherGuardian, athleteId: adultId, sinceMs: academy.clock.ms };
    await academy.db.insert(guardianship).values(standsFor);
    await (await academy.as(WHO.adult.personId)).consent.grantGuardians({ athleteId: adultId, grants: true });
    const granted = await academy.as(WHO.otherGuardian);
    expect((await granted.account.me({})).athletes.map((each) => each.athleteId)).toContain(adultId);
    expect(await granted.today.family({ athleteId: adultId })).toMatchObject({ mayDecide: false });
    expect(await granted.sessions.coming({ athleteId: adultId })).toMatchObject({ mayBook: false });
    const before = academy.snapshot();
    await expect(granted.consent.decide({ athleteId: adultId, kind: "withdrawn" })).rejects.toMatchObject({
      code: "NOT_FOUND",
    });
    expect(academy.snapshot()).toBe(before);
  });

  it("is not a minor's to grant", async () => {
    const academy = await makeAcademy();
    const teen = await academy.as(WHO.teen.personId);
    await expect(teen.consent.grantGuardians({ athleteId, grants: true })).rejects.toMatchObject({
      code: "NOT_FOUND",
    });
  });
});
