import { and, eq, inArray, isNotNull, isNull, lte } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { athlete } from "@/db/schema/people";
import { site } from "@/db/schema/sites";
import { isPastRetention } from "@/server/domain/clips/send-clip";
import { addDays, dayOf } from "@/server/domain/time/calendar-day";

/** Marks every clip as expired whose last day has passed at its athlete's home site. @returns how many */
export async function expirePastRetention(tx: Db, nowMs: number): Promise<number> {
  /* No zone is further ahead than the next day by UTC. */
  const latestToday = addDays(dayOf(nowMs, "UTC"), 1);
  const rows = await tx
    .select({ id: clip.id, retainUntil: clip.retainUntil, zone: site.zone })
    .from(clip)
    .innerJoin(athlete, eq(athlete.id, clip.athleteId))
    .innerJoin(site, eq(site.id, athlete.homeSiteId))
    .where(and(inArray(clip.state, ["ready", "replaced", "drawing"]), lte(clip.retainUntil, latestToday)));
  const past = rows.filter((row) => isPastRetention(row.retainUntil, dayOf(nowMs, row.zone)));
  return expire(
    tx,
    past.map((row) => row.id),
  );
}

/** Marks clips as expired that were uploaded by `beforeMs` and never sent. @returns how many */
export async function expireUnsent(tx: Db, beforeMs: number): Promise<number> {
  const rows = await tx
    .select({ id: clip.id })
    .from(clip)
    .where(and(eq(clip.state, "waiting"), lte(clip.createdAtMs, beforeMs)));
  return expire(
    tx,
    rows.map((row) => row.id),
  );
}

async function expire(tx: Db, clipIds: string[]): Promise<number> {
  for (const id of clipIds) await tx.update(clip).set({ state: "expired" }).where(eq(clip.id, id));
  return clipIds.length;
}

/** Expired clips whose film is still there, by the name it is stored under. */
export async function filmsToRemove(db: Db): Promise<{ clipId: string; storageName: string }[]> {
  const rows = await db
    .select({ clipId: clip.id, storageName: clip.storageName })
    .from(clip)
    .where(and(eq(clip.state, "expired"), isNotNull(clip.storageName)));
  return rows.flatMap(({ clipId, storageName }) => (storageName ? [{ clipId, storageName }] : []));
}

/** Forgets a film that has been removed. A clip that was never sent leaves no row behind. */
export async function forgetFilm(tx: Db, clipId: string): Promise<void> {
  await tx
    .update(clip)
    .set({ storageName: null, hasPoster: false })
    .where(and(eq(clip.id, clipId), eq(clip.state, "expired")));
  await tx.delete(clip).where(and(eq(clip.id, clipId), eq(clip.state, "expired"), isNull(clip.roundId)));
}

/** Every name a film is stored under. */
export async function storedNames(db: Db): Promise<Set<string>> {
  const rows = await db
    .select({ storageName: clip.storageName })
    .from(clip)
    .where(isNotNull(clip.storageName));
  return new Set(rows.map((row) => row.storageName ?? ""));
}
