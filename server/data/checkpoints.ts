import { and, count, eq, max } from "drizzle-orm";
import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { type Checkpoint, inDeliveryOrder } from "@/server/domain/mechanics/checkpoint";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { directionColumns, statedDirection } from "@/server/domain/mechanics/wanted-direction";

/** A checkpoint as it is kept, with the version that a change must name. */
export interface KeptCheckpoint extends Checkpoint {
  version: number;
}

/** Every checkpoint of the academy, those put aside included, in the delivery's order. */
export async function listCheckpoints(db: Db): Promise<KeptCheckpoint[]> {
  const rows = await db.select().from(checkpoint).orderBy(checkpoint.position, checkpoint.id);
  return rows
    .map(({ position, views, cues, drills, wanted, wantedTo, ...row }) => ({
      ...row,
      wanted: statedDirection({ wanted, wantedTo }),
      views: JSON.parse(views) as CameraView[],
      cues: JSON.parse(cues) as string[],
      drills: JSON.parse(drills) as string[],
    }))
    .sort(inDeliveryOrder);
}

/** A checkpoint in the columns it is kept in. */
export function checkpointRow({ views, cues, drills, wanted, ...words }: Checkpoint) {
  return {
    ...words,
    ...directionColumns(wanted),
    views: JSON.stringify(views),
    cues: JSON.stringify(cues),
    drills: JSON.stringify(drills),
  };
}

/** Adds checkpoints behind those there are, in the order given. */
export async function insertCheckpoints(tx: Db, checkpoints: readonly Checkpoint[]): Promise<void> {
  const [last] = await tx.select({ position: max(checkpoint.position) }).from(checkpoint);
  const first = (last?.position ?? -1) + 1;
  for (const [index, each] of checkpoints.entries()) {
    await tx.insert(checkpoint).values({ ...checkpointRow(each), position: first + index });
  }
}

/**
 * Saves a checkpoint over the version it was read at.
 * @returns false when somebody saved in between; nothing is written then
 */
export async function saveCheckpoint(tx: Db, changed: Checkpoint, version: number): Promise<boolean> {
  const saved = await tx
    .update(checkpoint)
    .set({ ...checkpointRow(changed), version: version + 1 })
    .where(and(eq(checkpoint.id, changed.id), eq(checkpoint.version, version)))
    .returning({ id: checkpoint.id });
  return saved.length === 1;
}

/** How many checkpoints are offered in reviews. */
export async function countActiveCheckpoints(db: Db): Promise<number> {
  const [row] = await db.select({ active: count() }).from(checkpoint).where(eq(checkpoint.active, true));
  return row?.active ?? 0;
}
