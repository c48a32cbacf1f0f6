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

/** Forgets an account's wrong tries after the right password. */
export async function forgetTries(email: string): Promise<void> {
  await perAccount.delete(email.trim().toLowerCase());
}
