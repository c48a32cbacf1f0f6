import { and, asc, count, desc, eq, isNull, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { blindItem, blindRating, blindSet } from "@/db/schema/mechanics";
import type { AthleteScope } from "@/server/domain/access/relation";
import type { BlindFrame } from "@/server/domain/mechanics/blind-draw";
import type { GivenRating } from "@/server/domain/mechanics/blind-results";
import type { Place } from "@/server/domain/reviews/draft";
import { athleteScope } from "./access";
import { newId } from "./new-id";

/** A blind set as it is kept. */
export type BlindSet = typeof blindSet.$inferSelect;

/** One frame of a blind set as it is kept. */
export type BlindItemRow = typeof blindItem.$inferSelect;

/** Keeps a set and the frames drawn for it, in the order in which they are rated. @returns nothing; the id is given */
export async function keepBlindSet(
  tx: Db,
  set: Omit<BlindSet, "closedAtMs">,
  frames: readonly BlindFrame[],
): Promise<void> {
  await tx.insert(blindSet).values(set);
  for (const [position, { coachId: _coachId, ...frame }] of frames.entries()) {
    await tx.insert(blindItem).values({ ...frame, id: newId("bli"), setId: set.id, position });
  }
}

/** A set, or null when there is none by that id. */
export async function findBlindSet(db: Db, setId: string): Promise<BlindSet | null> {
  const [row] = await db.select().from(blindSet).where(eq(blindSet.id, setId));
  return row ?? null;
}

/** One frame of a set, or null when there is none by that id. */
export async function findBlindItem(db: Db, itemId: string): Promise<BlindItemRow | null> {
  const [row] = await db.select().from(blindItem).where(eq(blindItem.id, itemId));
  return row ?? null;
}

/** The frames of a set in their order, each with its round and whether its film is there. */
export async function blindItems(db: Db, setId: string) {
  const rows = await db
    .select({ item: blindItem, roundId: clip.roundId, state: clip.state })
    .from(blindItem)
    .leftJoin(clip, eq(clip.id, blindItem.clipId))
    .where(eq(blindItem.setId, setId))
    .orderBy(asc(blindItem.position));
  return rows.map(({ item, roundId, state }) => ({ ...item, roundId, state: state ?? ("expired" as const) }));
}

/** The latest sets, as many as a list holds. Common practice, no source. */
const MAX_SETS = 100;

/** The sets, open ones first and then the latest, each with its number of frames. */
export async function listBlindSets(db: Db) {
  return db
    .select({
      id: blindSet.id,
      name: blindSet.name,
      madeAtMs: blindSet.madeAtMs,
      closedAtMs: blindSet.closedAtMs,
      items: count(blindItem.id),
      isJudged: sql<number>`max(${blindItem.kind} = 'judgement')`,
    })
    .from(blindSet)
    .innerJoin(blindItem, eq(blindItem.setId, blindSet.id))
    .groupBy(blindSet.id)
    .orderBy(desc(isNull(blindSet.closedAtMs)), desc(blindSet.madeAtMs), desc(blindSet.id))
    .limit(MAX_SETS);
}

/** How many frames each coach has rated, by set; of one set when it is named. What they said is not read. */
export async function ratedCounts(db: Db, setId: string | null = null) {
  return db
    .select({ setId: blindItem.setId, coachId: blindRating.coachPersonId, rated: count() })
    .from(blindRating)
    .innerJoin(blindItem, eq(blindItem.id, blindRating.itemId))
    .where(setId === null ? undefined : eq(blindItem.setId, setId))
    .groupBy(blindItem.setId, blindRating.coachPersonId);
}

/** The items of a set that one coach has rated, by id. */
export async function ratedBy(db: Db, setId: string, coachPersonId: string): Promise<Set<string>> {
  const rows = await db
    .select({ itemId: blindRating.itemId })
    .from(blindRating)
    .innerJoin(blindItem, eq(blindItem.id, blindRating.itemId))
    .where(and(eq(blindItem.setId, setId), eq(blindRating.coachPersonId, coachPersonId)));
  return new Set(rows.map(({ itemId }) => itemId));
}

/** What was said in a set that is closed, by frame and coach; nothing of one that is open, whoever asks. */
export async function ratingsOfClosed(db: Db, setId: string): Promise<GivenRating[]> {
  const set = await findBlindSet(db, setId);
  if (set === null || set.closedAtMs === null) return [];
  return db
    .select({ itemId: blindRating.itemId, coachId: blindRating.coachPersonId, value: blindRating.value })
    .from(blindRating)
    .innerJoin(blindItem, eq(blindItem.id, blindRating.itemId))
    .where(eq(blindItem.setId, setId))
    .orderBy(asc(blindItem.position), asc(blindRating.coachPersonId));
}

/** Keeps what a coach said of an item. @returns false when they had rated it before; nothing is written then */
export async function keepRating(
  tx: Db,
  rating: {
    itemId: string;
    coachPersonId: string;
    value: number | null;
    points: readonly Place[];
    ratedAtMs: number;
  },
): Promise<boolean> {
  const kept = await tx
    .insert(blindRating)
    .values({ ...rating, points: JSON.stringify(rating.points), id: newId("blr") })
    .onConflictDoNothing()
    .returning({ id: blindRating.id });
  return kept.length === 1;
}

/** Closes a set. @returns false when it was closed before */
export async function closeBlindSet(tx: Db, setId: string, closedAtMs: number): Promise<boolean> {
  const closed = await tx
    .update(blindSet)
    .set({ closedAtMs })
    .where(and(eq(blindSet.id, setId), isNull(blindSet.closedAtMs)))
    .returning({ id: blindSet.id });
  return closed.length === 1;
}

/** What access needs of every athlete in a set, or null when there is no such set. */
export async function blindSetScopes(db: Db, setId: string): Promise<AthleteScope[] | null> {
  const rows = await db
    .selectDistinct({ athleteId: blindItem.athleteId })
    .from(blindItem)
    .where(eq(blindItem.setId, setId));
  const scopes: AthleteScope[] = [];
  for (const { athleteId } of rows) {
    const scope = await athleteScope(db, athleteId);
    if (scope) scopes.push(scope);
  }
  return scopes.length === 0 ? null : scopes;
}

/** What access needs of the athlete on an item's frame, or null when there is no such item. */
export async function blindItemScope(db: Db, itemId: string): Promise<AthleteScope | null> {
  const item = await findBlindItem(db, itemId);
  return item ? athleteScope(db, item.athleteId) : null;
}
