import { and, asc, count, eq, isNull, max } from "drizzle-orm";
import type { Db } from "@/db/client";
import { charge, rate } from "@/db/schema/ledger";
import type { ChargeKind } from "@/server/domain/ledger/charge-kind";
import type { RateEnd } from "@/server/domain/ledger/price-change";
import type { Rate } from "@/server/domain/ledger/rates";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** Every rate there is or was, by kind and first day. */
export async function listRates(db: Db): Promise<Rate[]> {
  return db.select().from(rate).orderBy(rate.kind, asc(rate.effectiveFrom));
}

/** The last day on which the kind was charged, reversed charges left in; null when never. */
export async function lastChargedOn(db: Db, kind: ChargeKind): Promise<CalendarDay | null> {
  const [row] = await db
    .select({ day: max(charge.chargedOn) })
    .from(charge)
    .where(and(eq(charge.kind, kind), isNull(charge.reversesId)));
  return row?.day ?? null;
}

/** Whether any charge was made under a rate. */
export async function isRateCharged(db: Db, rateId: string): Promise<boolean> {
  const [row] = await db.select({ charges: count() }).from(charge).where(eq(charge.rateId, rateId));
  return (row?.charges ?? 0) > 0;
}

/** Adds a rate. */
export async function insertRate(tx: Db, row: Rate): Promise<void> {
  await tx.insert(rate).values(row);
}

/** Sets the first day on which rates no longer hold. */
export async function endRates(tx: Db, ends: readonly RateEnd[]): Promise<void> {
  for (const { rateId, effectiveTo } of ends) {
    await tx.update(rate).set({ effectiveTo }).where(eq(rate.id, rateId));
  }
}

/** Takes out a rate that nothing was charged under. */
export async function deleteRate(tx: Db, rateId: string): Promise<void> {
  await tx.delete(rate).where(eq(rate.id, rateId));
}
