import { hash, verify } from "@node-rs/argon2";

/** Argon2id at 19 MiB, two passes, one lane (OWASP Password Storage Cheat Sheet, first recommended setting). */
const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

/** Hashes a password for keeping. */
export function hashPassword(password: string): Promise<string> {
  return hash(password, COST);
}

/* A hash of a random text: checked when there is no account, so that the answer takes the same time. */
let standIn: Promise<string> | null = null;

/** Whether the password fits the hash; without a hash (no such account) it takes as long and says no. */
export async function passwordFits(password: string, passwordHash: string | null): Promise<boolean> {
  standIn ??= hashPassword(crypto.randomUUID());
  const fits = await verify(passwordHash ?? (await standIn), password);
  return fits && passwordHash !== null;
}
