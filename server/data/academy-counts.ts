import { and, count, countDistinct, eq, gt, isNull, lte, or } from "drizzle-orm";
import type { Db } from "@/db/client";
import { coachHours } from "@/db/schema/coaches";
import { rate } from "@/db/schema/ledger";
import { athlete, staffRole } from "@/db/schema/people";
import { lane, site, siteHours } from "@/db/schema/sites";
import type { AcademyCounts } from "@/server/domain/people/still-to-set";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { isStillThere } from "./leaving";

/** What the academy has; rates as of `today`, what has ended or was retired left out. */
export async function academyCounts(db: Db, today: CalendarDay): Promise<AcademyCounts> {
  const [sites] = await db.select({ all: count() }).from(site).where(isNull(site.retiredAtMs));
  const [open] = await db
    .select({ all: countDistinct(siteHours.siteId) })
    .from(siteHours)
    .innerJoin(site, eq(site.id, siteHours.siteId))
    .where(isNull(site.retiredAtMs));
  const [lanes] = await db.select({ all: count() }).from(lane).where(isNull(lane.retiredAtMs));
  const isCoach = and(eq(staffRole.role, "coach"), isNull(staffRole.endedAtMs));
  const [coaches] = await db.select({ all: count() }).from(staffRole).where(isCoach);
  const [working] = await db
    .select({ all: countDistinct(coachHours.coachPersonId) })
    .from(coachHours)
    .innerJoin(staffRole, and(eq(staffRole.personId, coachHours.coachPersonId), isCoach));
  const [priced] = await db
    .select({ all: countDistinct(rate.kind) })
    .from(rate)
    .where(and(lte(rate.effectiveFrom, today), or(isNull(rate.effectiveTo), gt(rate.effectiveTo, today))));
  const [athletes] = await db.select({ all: count() }).from(athlete).where(isStillThere(today));
  return {
    sites: sites?.all ?? 0,
    sitesWithHours: open?.all ?? 0,
    lanes: lanes?.all ?? 0,
    coaches: coaches?.all ?? 0,
    coachesWithHours: working?.all ?? 0,
    pricedKinds: priced?.all ?? 0,
    athletes: athletes?.all ?? 0,
  };
}
