import { and, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { consent } from "@/db/schema/people";
import { hasConsent } from "@/server/domain/people/consent";

/** Whether there is a live consent to video of the athlete: given for the text in force, and not withdrawn since. */
export async function hasVideoConsent(db: Db, athleteId: string): Promise<boolean> {
  const rows = await db
    .select({
      purpose: consent.purpose,
      kind: consent.kind,
      textVersion: consent.textVersion,
      atMs: consent.atMs,
    })
    .from(consent)
    .where(and(eq(consent.athleteId, athleteId), eq(consent.purpose, "video")));
  return hasConsent(rows, "video");
}
