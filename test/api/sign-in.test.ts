import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { account, signIn } from "@/db/schema/people";
import { authOptions, signInWith } from "@/server/auth/options";
import { hashPassword } from "@/server/auth/password";
import { log } from "@/server/log";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";

const GOOD = "four unrelated words here";
const held = globalThis as unknown as { slabsideConnections?: unknown };
const logged = vi.spyOn(log, "error");

let academy: TestAcademy;
let email: string;
/* The limits on tries live as long as the process: every test has an account and an address of its own. */
let address = 0;

beforeEach(async () => {
  logged.mockReset().mockImplementation(() => undefined);
  academy = await makeAcademy();
  held.slabsideConnections = academy.connections;
  address += 1;
  const passwordHash = await hashPassword(GOOD);
  email = `gwen.${address}@test.example`;
  await academy.db.update(account).set({ email, passwordHash }).where(eq(account.personId, WHO.guardian));
});
afterEach(() => {
  held.slabsideConnections = undefined;
});

const tryWith = (changes: { email?: string; password?: string } = {}) =>
  signInWith({ email, password: GOOD, address: `192.0.2.${address}`, device: "test", ...changes });

/** As the sign-in page does: what is thrown here is shown there. */
async function atTheDoor(password: string) {
  const [provider] = authOptions.providers as unknown as { options: { authorize: Authorize } }[];
  const headers = { "x-forwarded-for": `192.0.2.${address}` };
  return provider?.options.authorize({ email, password }, { headers });
}
type Authorize = (sent: object, request: { headers: object }) => Promise<unknown>;

describe("signing in", () => {
  it("takes the right password in any letter case of the address, and begins a sign-in", async () => {
    const ids = await tryWith({ email: ` ${email.toUpperCase()} ` });
    expect(ids?.personId).toBe(WHO.guardian);
    expect(
      await academy.db
        .select()
        .from(signIn)
        .where(eq(signIn.id, ids?.signInId ?? "")),
    ).toHaveLength(1);
  });

  it("answers alike, and begins nothing, whatever it is that does not fit", async () => {
    const before = academy.snapshot();
    expect(await tryWith({ password: "five unrelated words here now" })).toBeNull();
    expect(await tryWith({ email: "nobody@test.example" })).toBeNull();
    const [invited] = await academy.db.select().from(account).where(eq(account.personId, WHO.coach));
    expect(await tryWith({ email: invited?.email ?? "" })).toBeNull();
    expect(academy.snapshot()).toBe(before);
    await academy.db.update(account).set({ disabledAtMs: 1 }).where(eq(account.personId, WHO.guardian));
    expect(await tryWith()).toBeNull();
  });

  it("stops after ten wrong tries an account, also with the right password then, and says so", async () => {
    for (let tries = 0; tries < 10; tries += 1) expect(await tryWith({ password: "wrong" })).toBeNull();
    await expect(tryWith()).rejects.toMatchObject({ detail: { reason: "too_many_tries" } });
    await expect(atTheDoor(GOOD)).rejects.toThrow("Too many tries.");
  });

  it("tells a fault by its number, never by its own words, and a full disk as one", async () => {
    const pages = academy.sqlite.pragma("page_count", { simple: true }) as number;
    academy.sqlite.pragma(`max_page_count = ${pages}`);
    let told: unknown = null;
    for (let tries = 0; tries < 100 && !told; tries += 1) {
      await atTheDoor(GOOD).catch((error: Error) => (told = error.message));
    }
    expect(told).toContain("The academy's disk is full.");
    academy.sqlite.exec("PRAGMA foreign_keys = OFF; DROP TABLE sign_in");
    const fault = await atTheDoor(GOOD).catch((error: Error) => error.message);
    expect(fault).toMatch(/^Something went wrong here, not with you\. .* this number: [0-9a-f]{8}\.$/);
  });
});
