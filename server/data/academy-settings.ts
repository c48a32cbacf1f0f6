import { and, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { academy } from "@/db/schema/people";
import type { AcademySettings } from "@/server/domain/people/academy-settings";

/** The settings as they are kept, with the version that a change must name. */
export interface KeptSettings extends AcademySettings {
  isDemo: boolean;
  version: number;
}

/** The academy's settings, or null before there is an academy. */
export async function findSettings(db: Db): Promise<KeptSettings | null> {
  const [row] = await db.select().from(academy);
  if (!row) return null;
  const { id, createdAtMs, countedKinds, ...settings } = row;
  return settings;
}

/** Makes the academy's one row. */
export async function insertAcademy(
  tx: Db,
  settings: AcademySettings,
  facts: { isDemo: boolean; nowMs: number },
): Promise<void> {
  const { isDemo, nowMs } = facts;
  await tx.insert(academy).values({ id: "academy", ...settings, isDemo, createdAtMs: nowMs });
}

/**
 * Saves the settings over the version they were read at.
 * @returns false when somebody saved in between; nothing is written then
 */
export async function saveSettings(tx: Db, settings: AcademySettings, version: number): Promise<boolean> {
  const saved = await tx
    .update(academy)
    .set({ ...settings, version: version + 1 })
    .where(and(eq(academy.id, "academy"), eq(academy.version, version)))
    .returning({ id: academy.id });
  return saved.length === 1;
}
