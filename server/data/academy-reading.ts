import { and, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { academy } from "@/db/schema/people";
import { CAUTIOUS_READING, type ThrowReading } from "@/server/domain/throwing/throw-entry";

/** How the academy reads the books, with the version of its settings that a change must name. */
export interface KeptReading extends ThrowReading {
  version: number;
}

/** The academy's reading of the books; the cautious one before there is an academy. */
export async function academyReading(db: Db): Promise<KeptReading> {
  const [row] = await db
    .select({ countedKinds: academy.countedKinds, version: academy.version })
    .from(academy);
  return row ? { ...CAUTIOUS_READING, ...row } : { ...CAUTIOUS_READING, version: 0 };
}

/**
 * Says which mound work counts, over the version of the settings it was read at. It holds at once, for every answer.
 * @returns false when somebody saved in between; nothing is written then
 */
export async function saveCountedKinds(
  tx: Db,
  countedKinds: ThrowReading["countedKinds"],
  version: number,
): Promise<boolean> {
  const saved = await tx
    .update(academy)
    .set({ countedKinds: [...countedKinds], version: version + 1 })
    .where(and(eq(academy.id, "academy"), eq(academy.version, version)))
    .returning({ id: academy.id });
  return saved.length === 1;
}
