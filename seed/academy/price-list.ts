import { chargeFor } from "@/server/domain/ledger/charge";
import type { ChargeKind } from "@/server/domain/ledger/charge-kind";
import type { Rate } from "@/server/domain/ledger/rates";
import { addMonths, dayOf } from "@/server/domain/time/calendar-day";
import { DEMO_SETTINGS } from "./place";
import { dayFromToday, FOUNDED_DAYS, type World } from "./world";

/** Price before and since the change, in cents. */
const PRICES: Record<ChargeKind, readonly [beforeCents: number, sinceCents: number]> = {
  lesson: [8500, 9000],
  bullpen: [4500, 4800],
  group: [3500, 3500],
  assessment: [12_000, 12_500],
  dry_work: [5000, 5500],
  review: [2500, 2800],
};

/** Months before this one in which prices changed. */
const CHANGED_MONTHS_AGO = 4;

/**
 * The rates since the academy is there, with one change of price within the season; a kind whose price stayed has one
 * rate.
 */
export function buildPriceList(world: World): void {
  const effectiveFrom = dayFromToday(world, -FOUNDED_DAYS);
  const changedOn = addMonths(`${world.today.slice(0, 7)}-01`, -CHANGED_MONTHS_AGO);
  for (const [kind, [before, since]] of Object.entries(PRICES) as [ChargeKind, readonly [number, number]][]) {
    const row = { kind, currency: DEMO_SETTINGS.currency };
    const changes = before !== since;
    const first = { ...row, id: world.id("rat"), priceCents: before, effectiveFrom };
    world.rows.rate.push({ ...first, effectiveTo: changes ? changedOn : null });
    if (!changes) continue;
    const id = world.id("rat");
    const second = { ...row, priceCents: since, effectiveFrom: changedOn };
    world.rows.rate.push({ ...second, id, effectiveTo: null });
    world.acts.push({
      atMs: world.nowMs - 130 * 86_400_000,
      actorPersonId: world.staffIds.dell,
      action: "rate.set",
      subjectId: id,
      facts: second,
    });
  }
}

/** What something is charged for. */
export interface ChargedWork {
  kind: ChargeKind;
  athleteId: string;
  coachId: string;
  siteId: string;
  /** The instant whose day at the site decides the rate: the start of a session, the sending of a review. */
  whenMs: number;
  atMs: number;
  source: { sessionId: string } | { reviewId: string };
}

/** Writes the charge for one athlete under the rate in force on the day. */
export function writeCharge(world: World, work: ChargedWork): void {
  const { kind, athleteId, coachId: coachPersonId, siteId, atMs, source } = work;
  const rates: Rate[] = world.rows.rate.map((rate) => ({ ...rate, effectiveTo: rate.effectiveTo ?? null }));
  const priced = chargeFor({ kind, athleteId, day: dayOf(work.whenMs, world.zone) }, rates);
  if (!priced.ok) throw new RangeError(`No rate for ${kind}.`);
  world.rows.charge.push({ id: world.id("chg"), ...priced.charge, ...source, coachPersonId, siteId, atMs });
}
