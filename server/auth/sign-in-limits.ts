import { RateLimiterMemory, RateLimiterRes } from "rate-limiter-flexible";
import { Refusal } from "@/server/domain/errors/refusal";

/* Ten wrong tries an account and sixty an address in a quarter of an hour; common practice, no source. */
const perAccount = new RateLimiterMemory({ keyPrefix: "account", points: 10, duration: 900 });
const perAddress = new RateLimiterMemory({ keyPrefix: "address", points: 60, duration: 900 });

/**
 * Counts a try to sign in, or to ask for a link.
 * @throws Refusal `too_many_tries` once the account or the address is over its limit
 */
export async function countTry(email: string, address: string): Promise<void> {
  try {
    await perAddress.consume(address);
    await perAccount.consume(email.trim().toLowerCase());
  } catch (error) {
    if (!(error instanceof RateLimiterRes)) throw error;
    throw new Refusal({ reason: "too_many_tries", retryAfterMs: error.msBeforeNext });
  }
}

/* Sixty links that open nothing an address in a quarter of an hour; who reads an open one is never stopped. */
const wrongLinks = new RateLimiterMemory({ keyPrefix: "wrong-link", points: 60, duration: 900 });

/**
 * Refuses to look at a link from an address that tried too many which open nothing.
 * @throws Refusal `too_many_tries`
 */
export async function refuseLinkGuesses(address: string): Promise<void> {
  const tried = await wrongLinks.get(address);
  if (tried === null || tried.remainingPoints > 0) return;
  throw new Refusal({ reason: "too_many_tries", retryAfterMs: tried.msBeforeNext });
}

/** Counts a link that opens nothing against the address it came from. */
export async function countWrongLink(address: string): Promise<void> {
  await wrongLinks.penalty(address);
}

/** Forgets an account's wrong tries after the right password. */
export async function forgetTries(email: string): Promise<void> {
  await perAccount.delete(email.trim().toLowerCase());
}
