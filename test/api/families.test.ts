import { and, eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { athlete, auditLog, guardianship } from "@/db/schema/people";
import { firstBrokenAuditRow } from "@/server/data/audit";
import { makeAcademy, WHO } from "../helpers/academy";
import { NEW_ATHLETE, NEW_ATHLETE_RECORD, NEW_GUARDIAN } from "../helpers/new-people";
import { because, refuses } from "../helpers/refuses";

describe("adding an athlete", () => {
  it("writes the record, the guardian and the coach, and leaves an unbroken trail", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const { athleteId, personId } = await admin.families.addAthlete(NEW_ATHLETE);
    const found = await admin.people.person({ personId });
    expect(found.athlete).toMatchObject({
      athleteId,
      throws: "left",
      heightCm: 148,
      coachPersonId: WHO.coach,
    });
    expect(found.athlete?.joinedOn).toBe("2026-11-25");
    expect(found.athlete?.guardians).toMatchObject([{ givenName: "Nell", email: "nell@test.example" }]);
    expect(found.signIn).toBe("none");
    const acts = await academy.db.select({ action: auditLog.action }).from(auditLog);
    expect(acts.map((row) => row.action)).toEqual(["guardian.added", "athlete.added"]);
    expect(await firstBrokenAuditRow(academy.db)).toBeNull();
  });

  it("lets a guardian on record stand for a second athlete", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    await admin.families.addAthlete({ ...NEW_ATHLETE, guardians: [{ personId: WHO.guardian }] });
    const { standsFor } = await admin.people.person({ personId: WHO.guardian });
    expect(standsFor.map((ward) => ward.givenName)).toEqual(["Kit", "Lou", "Robin"]);
  });

  it("refuses a minor without a guardian, but not an athlete of 18 on that very day", async () => {
    const academy = await makeAcademy();
    const alone = { ...NEW_ATHLETE, guardians: [], bornOn: "2008-11-26" };
    await refuses(academy, WHO.admin, (api) => api.families.addAthlete(alone), {
      code: "UNPROCESSABLE_CONTENT",
      ...because("guardian_missing", { athleteGivenName: "Lou" }),
    });
    const admin = await academy.as(WHO.admin);
    await admin.families.addAthlete({ ...alone, bornOn: "2008-11-25" });
  });

  it.each([
    ["a birth date to come", { bornOn: "2027-01-01" }, because("settings_invalid")],
    ["a site that is not there", { homeSiteId: "site_none" }, because("not_found")],
    ["a coach who is none", { coachPersonId: WHO.guardian }, because("not_found")],
    ["a guardian who is not on record", { guardians: [{ personId: "per_none" }] }, because("not_found")],
    [
      "a guardian who is under 18",
      { guardians: [{ personId: WHO.teen.personId }] },
      because("not_a_guardian"),
    ],
    [
      "a new guardian with an address in use",
      { guardians: [{ ...NEW_GUARDIAN, email: "ada.frost.per_admin@test.example" }] },
      because("email_taken"),
    ],
  ])("refuses %s and writes nothing", async (_, change, refusal) => {
    const academy = await makeAcademy();
    await refuses(
      academy,
      WHO.admin,
      (api) => api.families.addAthlete({ ...NEW_ATHLETE, ...change }),
      refusal,
    );
  });
});

describe("editing an athlete", () => {
  const edit = {
    ...NEW_ATHLETE_RECORD,
    athleteId: WHO.teen.athleteId,
    givenName: "Robin",
    bornOn: "2010-03-02",
    version: 1,
  };

  it("saves over the version it was read at, and refuses an older one", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    await admin.families.editAthlete(edit);
    await refuses(academy, WHO.admin, (api) => api.families.editAthlete(edit), because("changed_meanwhile"));
    await admin.families.editAthlete({ ...edit, version: 2 });
  });

  it("disables the sign-in at once when the birth date turns out to be under 13", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    await admin.families.editAthlete({ ...edit, bornOn: "2014-03-02" });
    expect((await admin.people.person({ personId: WHO.teen.personId })).signIn).toBe("disabled");
    const api = await academy.as(WHO.teen.personId);
    await expect(api.account.me({})).rejects.toMatchObject({ code: "UNAUTHORIZED" });
  });

  it("refuses a birth date that makes a minor of an athlete without a guardian", async () => {
    const academy = await makeAcademy();
    const young = { ...edit, athleteId: WHO.adult.athleteId, bornOn: "2010-01-01" };
    await refuses(academy, WHO.admin, (api) => api.families.editAthlete(young), because("guardian_missing"));
  });

  it("lets any coach write down height and hand, and nothing else", async () => {
    const academy = await makeAcademy();
    const arm = { athleteId: WHO.teen.athleteId, version: 1, throws: "left", heightCm: 181 } as const;
    await (await academy.as(WHO.otherCoach)).families.editArm(arm);
    const [row] = await academy.db.select().from(athlete).where(eq(athlete.id, WHO.teen.athleteId));
    expect(row).toMatchObject({ heightCm: 181, version: 2 });
    await refuses(academy, WHO.coach, (api) => api.families.editArm(arm), because("changed_meanwhile"));
    await refuses(academy, WHO.guardian, (api) => api.families.editArm(arm), because("not_found"));
    await refuses(academy, WHO.coach, (api) => api.families.editAthlete(edit), because("not_found"));
  });
});

describe("guardians", () => {
  const teen = WHO.teen.athleteId;

  it("end at once, but never a minor's last", async () => {
    const academy = await makeAcademy();
    const end = { athleteId: teen, guardianPersonId: WHO.guardian };
    await refuses(
      academy,
      WHO.admin,
      (api) => api.families.endGuardianship(end),
      because("guardian_missing"),
    );
    const admin = await academy.as(WHO.admin);
    const { personId } = await admin.families.addGuardian({ athleteId: teen, guardian: NEW_GUARDIAN });
    await admin.families.endGuardianship(end);
    const guardian = await academy.as(WHO.guardian);
    expect((await guardian.account.me({})).athletes.map((each) => each.givenName)).toEqual(["Kit"]);
    await expect(guardian.consent.state({ athleteId: teen })).rejects.toMatchObject({ code: "NOT_FOUND" });
    const last = { athleteId: teen, guardianPersonId: personId };
    await refuses(
      academy,
      WHO.admin,
      (api) => api.families.endGuardianship(last),
      because("guardian_missing"),
    );
    await refuses(academy, WHO.admin, (api) => api.families.endGuardianship(end), because("not_a_guardian"));
  });

  it("may be added again after they ended", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    await admin.families.addGuardian({ athleteId: teen, guardian: NEW_GUARDIAN });
    await admin.families.endGuardianship({ athleteId: teen, guardianPersonId: WHO.guardian });
    await admin.families.addGuardian({ athleteId: teen, guardian: { personId: WHO.guardian } });
    const live = and(eq(guardianship.guardianPersonId, WHO.guardian), eq(guardianship.athleteId, teen));
    expect((await academy.db.select().from(guardianship).where(live))[0]?.endedAtMs).toBeNull();
  });

  it("see an athlete of age only while the athlete grants it", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const { athleteId } = WHO.adult;
    await admin.families.addGuardian({ athleteId, guardian: { personId: WHO.guardian } });
    const guardian = await academy.as(WHO.guardian);
    await expect(guardian.consent.state({ athleteId })).rejects.toMatchObject({ code: "NOT_FOUND" });
    await (await academy.as(WHO.adult.personId)).consent.grantGuardians({ athleteId, grants: true });
    expect((await guardian.consent.state({ athleteId })).givenName).toBe("Sam");
  });
});
