import { eq } from "drizzle-orm";
import { afterEach, describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { account, givenAnswer } from "@/db/schema/people";
import { hashOfToken } from "@/server/auth/link-token";
import { passwordFits } from "@/server/auth/password";
import { keepLink } from "@/server/data/accounts";
import { env } from "@/server/env";
import { makeAcademy, WHO } from "../helpers/academy";
import { callByPath } from "../helpers/call-by-path";

const GOOD = "four unrelated words here";

async function withLink(lifeMs = 3_600_000) {
  const academy = await makeAcademy();
  const token = "a-token-of-more-than-twenty-characters";
  await keepLink(academy.db, {
    tokenHash: hashOfToken(token),
    personId: WHO.guardian,
    purpose: "reset",
    nowMs: academy.clock.ms,
    expiresAtMs: academy.clock.ms + lifeMs,
  });
  return { academy, token };
}

describe("single-use links", () => {
  it("set the password once, end every sign-in, and are spent", async () => {
    const { academy, token } = await withLink();
    const nobody = await academy.as(null);
    await nobody.account.useLink({ token, password: GOOD });
    const [row] = await academy.db.select().from(account).where(eq(account.personId, WHO.guardian));
    expect(await passwordFits(GOOD, row?.passwordHash ?? null)).toBe(true);
    await expect((await academy.as(WHO.guardian)).account.me({})).rejects.toMatchObject({
      code: "UNAUTHORIZED",
    });
    const before = academy.snapshot();
    await expect(nobody.account.useLink({ token, password: GOOD })).rejects.toMatchObject({
      code: "NOT_FOUND",
    });
    expect(academy.snapshot()).toBe(before);
  });

  it("are all spent by the first that is used, by another address, and by an account that is disabled", async () => {
    const { academy, token } = await withLink();
    const other = "an-invitation-of-more-than-twenty-characters";
    const life = { nowMs: academy.clock.ms, expiresAtMs: academy.clock.ms + 3_600_000 };
    const invited = { personId: WHO.guardian, purpose: "invitation", ...life } as const;
    await keepLink(academy.db, { ...invited, tokenHash: hashOfToken(other) });
    const nobody = await academy.as(null);
    const admin = await academy.as(WHO.admin);
    const names = { personId: WHO.guardian, givenName: "Gwen", familyName: "Marsh", phone: null };
    const email = `gwen.marsh.${WHO.guardian}@test.example`;
    const ends: (() => Promise<unknown>)[] = [
      () => nobody.account.useLink({ token: other, password: GOOD }),
      () => admin.people.edit({ ...names, email: "gwen@test.example" }),
      () =>
        admin.invitations
          .disable({ personId: WHO.guardian })
          .then(() => admin.invitations.enable({ personId: WHO.guardian })),
    ];
    await admin.people.edit({ ...names, email });
    for (const end of ends) {
      await academy.discarding(async () => {
        expect(await nobody.account.link({ token })).toMatchObject({ email });
        await end();
        await expect(nobody.account.link({ token })).rejects.toMatchObject({ code: "NOT_FOUND" });
        await expect(nobody.account.link({ token: other })).rejects.toMatchObject({ code: "NOT_FOUND" });
      });
    }
  });

  it("expire, and refuse a weak password without being spent", async () => {
    const { academy, token } = await withLink();
    const nobody = await academy.as(null);
    await expect(nobody.account.useLink({ token, password: "short" })).rejects.toMatchObject({
      code: "BAD_REQUEST",
    });
    academy.clock.ms += 3_600_000;
    const later = await academy.as(null);
    await expect(later.account.useLink({ token, password: GOOD })).rejects.toMatchObject({
      code: "NOT_FOUND",
    });
  });

  it("are looked up before a password is hashed for them, and answer a repeat as before though spent", async () => {
    const { academy, token } = await withLink();
    const nobody = await academy.as(null, "0b5a3f0e-1111-4222-8333-444455556677");
    const first = await nobody.account.useLink({ token, password: GOOD });
    expect(await nobody.account.useLink({ token, password: GOOD })).toEqual(first);
    const stranger = await academy.as(null);
    const weak = stranger.account.useLink({ token: "a-token-of-nobody-at-all", password: "short" });
    await expect(weak).rejects.toMatchObject({ code: "NOT_FOUND" });
  });

  it("are sent for an address that has an account, and the answer is the same for one that has none", async () => {
    const academy = await makeAcademy();
    const nobody = await academy.as(null);
    const [row] = await academy.db.select().from(account).where(eq(account.personId, WHO.guardian));
    const known = await nobody.account.askReset({ email: row?.email ?? "" });
    expect(known).toEqual({ done: true });
    expect((await academy.db.select().from(notice)).map((each) => each.toPersonId)).toEqual([WHO.guardian]);
    expect(await nobody.account.askReset({ email: "nobody@test.example" })).toEqual(known);
    expect(await academy.db.select().from(notice)).toHaveLength(1);
  });
});

describe("a reset link of a minor", () => {
  it("goes to the minor alone, and their guardian is told that it did", async () => {
    const academy = await makeAcademy();
    const [row] = await academy.db.select().from(account).where(eq(account.personId, WHO.teen.personId));
    await (await academy.as(null)).account.askReset({ email: row?.email ?? "" });
    const sent = await academy.db.select().from(notice);
    expect(sent.map((each) => [each.toPersonId, each.body.includes("/join/")])).toEqual([
      [WHO.teen.personId, true],
      [WHO.guardian, false],
    ]);
    expect(sent[1]?.body).toContain("Robin Marsh");
  });
});

describe("sign-ins", () => {
  it("end at once, and only one's own", async () => {
    const academy = await makeAcademy();
    await (await academy.as(WHO.coach)).account.endSignIn({ signInId: `sgn_${WHO.guardian}` });
    const guardian = await academy.as(WHO.guardian);
    expect((await guardian.account.me({})).personId).toBe(WHO.guardian);
    await guardian.account.endSignIn({ signInId: `sgn_${WHO.guardian}` });
    await expect((await academy.as(WHO.guardian)).account.me({})).rejects.toMatchObject({
      code: "UNAUTHORIZED",
    });
  });
});

describe("a repeated command", () => {
  const { AUTH_SECRET } = env;
  afterEach(() => void Object.assign(env, { AUTH_SECRET }));

  it("is answered as before and changes nothing; with other content it is refused", async () => {
    const academy = await makeAcademy();
    const requestId = "0b5a3f0e-1111-4222-8333-444455556666";
    const first = await academy.as(null, requestId);
    const email =
      (await academy.db.select().from(account).where(eq(account.personId, WHO.coach)))[0]?.email ?? "";
    await first.account.askReset({ email });
    const before = academy.snapshot();
    expect(await first.account.askReset({ email })).toEqual({ done: true });
    expect(academy.snapshot()).toBe(before);
    await expect(first.account.askReset({ email: "other@test.example" })).rejects.toMatchObject({
      code: "CONFLICT",
    });
    expect(academy.snapshot()).toBe(before);
  });

  it("is known again by a fingerprint that cannot be made without the secret", async () => {
    const fingerprints = [
      await fingerprintUnder("one secret of enough letters in it"),
      await fingerprintUnder("another secret of enough letters"),
    ];
    expect(fingerprints[0]).toMatch(/^[0-9a-f]{64}$/);
    expect(fingerprints[1]).toMatch(/^[0-9a-f]{64}$/);
    expect(fingerprints[0]).not.toBe(fingerprints[1]);
  });
});

async function fingerprintUnder(secret: string) {
  Object.assign(env, { AUTH_SECRET: secret });
  const { academy, token } = await withLink();
  const requestId = "0b5a3f0e-1111-4222-8333-444455556666";
  await callByPath(academy, null, "account.useLink", { token, password: GOOD }, requestId);
  return (await academy.db.select().from(givenAnswer))[0]?.fingerprint;
}
