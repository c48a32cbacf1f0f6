import { eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { charge, rate } from "@/db/schema/ledger";
import { Refusal } from "@/server/domain/errors/refusal";
import { chargeFor } from "@/server/domain/ledger/charge";
import type { ChargeKind } from "@/server/domain/ledger/charge-kind";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { newId } from "./new-id";

/** One athlete's session, or one review, that is to be charged. */
export interface ChargedWork {
  kind: ChargeKind;
  athleteId: string;
  source: { sessionId: string } | { reviewId: string };
  coachPersonId: string;
  /** The session's site; for a review the athlete's home site. */
  siteId: string;
  /** The day at that site on which the session started or the review was sent: it decides the rate. */
  chargedOn: CalendarDay;
  atMs: number;
}

/**
 * Writes the charge for one piece of work under the rate in force on its day, in the transaction of the work itself.
 * @returns the id of the charge
 * @throws Refusal `no_rate` when nothing is priced for the kind that day; the unit of work then writes nothing
 */
export async function insertCharge(tx: Db, work: ChargedWork): Promise<string> {
  const { kind, athleteId, source, coachPersonId, siteId, chargedOn, atMs } = work;
  const rates = await tx.select().from(rate).where(eq(rate.kind, kind));
  const decided = chargeFor({ kind, athleteId, day: chargedOn }, rates);
  if (!decided.ok) throw new Refusal(decided.refusal);
  const id = newId("chg");
  await tx.insert(charge).values({ id, ...decided.charge, ...source, coachPersonId, siteId, atMs });
  return id;
}
