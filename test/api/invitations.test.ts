import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { account, guardianship, signIn } from "@/db/schema/people";
import { hashOfToken } from "@/server/auth/link-token";
import { findLink } from "@/server/data/accounts";
import { instantOf } from "@/server/domain/time/calendar-day";
import { makeAcademy, WHO, ZONE } from "../helpers/academy";
import { letJoin, NEW_ATHLETE, NEW_GUARDIAN } from "../helpers/new-people";
import { because, type Caller, refuses } from "../helpers/refuses";

describe("an invitation", () => {
  it("goes to the outbox as a link that works once, and a new one makes the old one useless", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const { personId } = await admin.people.addStaff({ ...NEW_GUARDIAN, roles: ["coach"] });
    await admin.invitations.send({ personId });
    await admin.invitations.send({ personId });
    const sent = await academy.db.select().from(notice).where(eq(notice.toPersonId, personId));
    const tokens = sent.map((row) => /\/join\/(\S+)/.exec(row.body)?.[1] ?? "");
    const found = await Promise.all(
      tokens.map((token) => findLink(academy.db, hashOfToken(token), academy.clock.ms)),
    );
    expect(found.map((link) => link !== null).sort()).toEqual([false, true]);
    expect((await admin.people.person({ personId })).signIn).toBe("invited");
  });

  it("to a minor is told to every guardian as well, the link to the minor alone", async () => {
    const academy = await makeAcademy();
    await (await academy.as(WHO.admin)).invitations.send({ personId: WHO.teen.personId });
    const sent = await academy.db.select().from(notice).where(eq(notice.kind, "invitation"));
    expect(sent.map((row) => [row.toPersonId, row.body.includes("/join/")])).toEqual([
      [WHO.teen.personId, true],
      [WHO.guardian, false],
    ]);
  });

  it("to a minor without anybody who stands for them is not sent at all", async () => {
    const academy = await makeAcademy();
    await academy.db.delete(guardianship);
    await (await academy.as(WHO.admin)).invitations.send({ personId: WHO.teen.personId });
    expect(await academy.db.select().from(notice)).toEqual([]);
  });

  it("is refused under 13, without an address, for an address in use, and once joined", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const child = await admin.families.addAthlete({ ...NEW_ATHLETE, email: "lou@test.example" });
    const twin = await admin.families.addAthlete({
      ...NEW_ATHLETE,
      bornOn: "2010-01-01",
      guardians: [{ personId: WHO.guardian }],
    });
    const invite = (personId: string) => (api: Caller) => api.invitations.send({ personId });
    await refuses(
      academy,
      WHO.admin,
      invite(child.personId),
      because("too_young_to_sign_in", { ageYears: 11 }),
    );
    await refuses(academy, WHO.admin, invite(twin.personId), because("email_missing"));
    await letJoin(academy, WHO.coach);
    await refuses(academy, WHO.admin, invite(WHO.coach), because("already_joined"));
    await refuses(academy, WHO.admin, invite("per_none"), because("not_found"));
  });
});

describe("a sign-in of an athlete under 13", () => {
  it("counts for nothing, however it came about, and from the thirteenth birthday on it does", async () => {
    const academy = await makeAcademy();
    const own = () => academy.as(WHO.child.personId).then((api) => api.account.me({}));
    await expect(own()).rejects.toMatchObject({ code: "UNAUTHORIZED" });
    academy.clock.ms = instantOf("2027-05-10", 0, ZONE) - 1;
    await expect(own()).rejects.toMatchObject({ code: "UNAUTHORIZED" });
    academy.clock.ms += 1;
    expect((await own()).personId).toBe(WHO.child.personId);
  });
});

describe("disabling an account", () => {
  it("ends every sign-in at once and can be taken back", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    await admin.invitations.disable({ personId: WHO.coach });
    await expect((await academy.as(WHO.coach)).account.me({})).rejects.toMatchObject({
      code: "UNAUTHORIZED",
    });
    const [row] = await academy.db.select().from(signIn).where(eq(signIn.personId, WHO.coach));
    expect(row?.endedAtMs).toBe(academy.clock.ms);
    await admin.invitations.enable({ personId: WHO.coach });
    const [kept] = await academy.db.select().from(account).where(eq(account.personId, WHO.coach));
    expect(kept?.disabledAtMs).toBeNull();
  });

  it("cannot be taken back for an athlete who is under 13", async () => {
    const academy = await makeAcademy();
    await (await academy.as(WHO.admin)).invitations.disable({ personId: WHO.child.personId });
    const enable = (api: Caller) => api.invitations.enable({ personId: WHO.child.personId });
    await refuses(academy, WHO.admin, enable, because("too_young_to_sign_in"));
  });
});
