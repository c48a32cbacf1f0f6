import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { account, athlete, staffRole } from "@/db/schema/people";
import { round } from "@/db/schema/rounds";
import { addPerson, makeAcademy, WHO } from "../helpers/academy";
import { letJoin, NEW_ATHLETE, NEW_GUARDIAN } from "../helpers/new-people";
import { because, type Caller, refuses } from "../helpers/refuses";

describe("staff", () => {
  it("are added, found by name and kind, and given further roles", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const { personId } = await admin.people.addStaff({ ...NEW_GUARDIAN, roles: ["coach"] });
    await admin.people.grantRole({ personId, role: "admin" });
    expect((await admin.people.person({ personId })).roles).toEqual(["admin", "coach"]);
    const found = await admin.people.list({ search: "NELL br", kind: "coach", page: 1 });
    expect(found.rows.map((row) => row.personId)).toEqual([personId]);
    expect((await admin.people.list({ search: "nell", kind: "guardian", page: 1 })).total).toBe(0);
    expect((await admin.people.choices({})).coaches.map((coach) => coach.givenName)).toContain("Nell");
  });

  it("find a guardian with those they stand for, and look for no pattern in what is typed", async () => {
    const academy = await makeAcademy();
    const coach = await academy.as(WHO.coach);
    const { rows, total } = await coach.people.list({ search: "", kind: "guardian", page: 1 });
    expect(total).toBe(2);
    expect(rows[0]?.standsFor.map((ward) => ward.givenName)).toEqual(["Kit", "Robin"]);
    expect((await coach.people.list({ search: "%", kind: null, page: 1 })).total).toBe(0);
    expect((await coach.people.list({ search: "", kind: null, page: 9 })).rows).toEqual([]);
  });

  it("keep one admin at least who has joined", async () => {
    const academy = await makeAcademy();
    const end = { personId: WHO.admin, role: "admin" } as const;
    const admin = await academy.as(WHO.admin);
    await admin.people.grantRole({ personId: WHO.coach, role: "admin" });
    await refuses(academy, WHO.admin, (api) => api.people.endRole(end), because("last_admin"));
    await refuses(
      academy,
      WHO.admin,
      (api) => api.invitations.disable({ personId: WHO.admin }),
      because("last_admin"),
    );
    await letJoin(academy, WHO.coach);
    await admin.people.endRole(end);
    expect((await (await academy.as(WHO.admin)).account.me({})).roles).toEqual([]);
    await (await academy.as(WHO.coach)).people.grantRole(end);
    expect((await (await academy.as(WHO.admin)).account.me({})).roles).toEqual(["admin"]);
  });

  it("cannot stop coaching while rounds are in hand; then their athletes are free", async () => {
    const academy = await makeAcademy();
    const end = { personId: WHO.otherCoach, role: "coach" } as const;
    await academy.db.insert(round).values({
      id: "rnd_1",
      athleteId: WHO.stranger.athleteId,
      siteId: WHO.site,
      state: "taken",
      coachPersonId: WHO.otherCoach,
      receivedAtMs: academy.clock.ms,
    });
    await refuses(
      academy,
      WHO.admin,
      (api) => api.people.endRole(end),
      because("coach_has_work", { rounds: 1 }),
    );
    await academy.db.update(round).set({ state: "settled" });
    await (await academy.as(WHO.admin)).people.endRole(end);
    const [row] = await academy.db.select().from(athlete).where(eq(athlete.id, WHO.stranger.athleteId));
    expect(row?.coachPersonId).toBeNull();
    const roles = await academy.db.select().from(staffRole).where(eq(staffRole.personId, WHO.otherCoach));
    expect(roles[0]?.endedAtMs).toBe(academy.clock.ms);
  });

  it("sign in by their new address once it is changed", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    await admin.people.edit({ ...NEW_GUARDIAN, personId: WHO.coach, email: "New@Test.Example" });
    const [row] = await academy.db.select().from(account).where(eq(account.personId, WHO.coach));
    expect(row?.email).toBe("new@test.example");
    const taken = { ...NEW_GUARDIAN, personId: WHO.otherCoach, email: "new@test.example" };
    await refuses(academy, WHO.admin, (api) => api.people.edit(taken), because("email_taken"));
  });
});

describe("who is turned away", () => {
  const acts: [string, (api: Caller) => Promise<unknown>][] = [
    ["families.addAthlete", (api) => api.families.addAthlete(NEW_ATHLETE)],
    [
      "families.assignCoach",
      (api) => api.families.assignCoach({ athleteId: WHO.teen.athleteId, coachPersonId: null }),
    ],
    [
      "families.addGuardian",
      (api) => api.families.addGuardian({ athleteId: WHO.teen.athleteId, guardian: NEW_GUARDIAN }),
    ],
    [
      "families.endGuardianship",
      (api) =>
        api.families.endGuardianship({ athleteId: WHO.teen.athleteId, guardianPersonId: WHO.guardian }),
    ],
    ["people.addStaff", (api) => api.people.addStaff({ ...NEW_GUARDIAN, roles: ["admin"] })],
    ["people.edit", (api) => api.people.edit({ ...NEW_GUARDIAN, personId: WHO.guardian })],
    ["people.grantRole", (api) => api.people.grantRole({ personId: WHO.coach, role: "admin" })],
    ["people.endRole", (api) => api.people.endRole({ personId: WHO.otherCoach, role: "coach" })],
    ["invitations.send", (api) => api.invitations.send({ personId: WHO.guardian })],
    ["invitations.disable", (api) => api.invitations.disable({ personId: WHO.guardian })],
    ["invitations.enable", (api) => api.invitations.enable({ personId: WHO.guardian })],
  ];

  it.each(acts)("%s turns away coach, guardian, athlete and nobody, and writes nothing", async (_, act) => {
    const academy = await makeAcademy();
    for (const personId of [WHO.coach, WHO.guardian, WHO.teen.personId, WHO.adult.personId]) {
      await refuses(academy, personId, act, { code: "NOT_FOUND" });
    }
    await refuses(academy, null, act, { code: "UNAUTHORIZED" });
  });

  it("families do not see the list of people", async () => {
    const academy = await makeAcademy();
    await addPerson(academy.db, "per_new", "New", "Person");
    for (const personId of [WHO.guardian, WHO.teen.personId, "per_new"]) {
      const api = await academy.as(personId);
      const list = api.people.list({ search: "", kind: null, page: 1 });
      await expect(list).rejects.toMatchObject({ code: "NOT_FOUND" });
      await expect(api.people.person({ personId: WHO.child.personId })).rejects.toMatchObject({
        code: "NOT_FOUND",
      });
    }
  });
});
