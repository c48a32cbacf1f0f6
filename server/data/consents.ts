import { desc, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { consent, person } from "@/db/schema/people";
import {
  type ConsentKind,
  type ConsentPurpose,
  hasConsent,
  VIDEO_CONSENT,
} from "@/server/domain/people/consent";
import { newId } from "./new-id";

/** The whole consent record of an athlete, latest first, with the names of those who decided. */
export async function consentRecord(db: Db, athleteId: string) {
  return db
    .select({
      id: consent.id,
      purpose: consent.purpose,
      kind: consent.kind,
      textVersion: consent.textVersion,
      atMs: consent.atMs,
      byGivenName: person.givenName,
      byFamilyName: person.familyName,
    })
    .from(consent)
    .innerJoin(person, eq(person.id, consent.personId))
    .where(eq(consent.athleteId, athleteId))
    .orderBy(desc(consent.atMs), desc(consent.id));
}

/** Whether a consent of the purpose is live for an athlete. */
export async function consentIsLive(db: Db, athleteId: string, purpose: ConsentPurpose): Promise<boolean> {
  const rows = await db
    .select({
      purpose: consent.purpose,
      kind: consent.kind,
      textVersion: consent.textVersion,
      atMs: consent.atMs,
    })
    .from(consent)
    .where(eq(consent.athleteId, athleteId));
  return hasConsent(rows, purpose);
}

/** Appends a decision to the consent record, for the text now in force. */
export async function appendConsent(
  tx: Db,
  row: { athleteId: string; personId: string; purpose: ConsentPurpose; kind: ConsentKind; atMs: number },
): Promise<void> {
  await tx.insert(consent).values({ id: newId("con"), ...row, textVersion: VIDEO_CONSENT.version });
}
