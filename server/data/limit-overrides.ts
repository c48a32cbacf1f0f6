import { desc, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { person, remark } from "@/db/schema/people";
import { limitOverride } from "@/db/schema/throwing";
import { overrideNotice, type ToldOverride } from "@/server/domain/notices/override-notice";
import { fullName } from "@/server/domain/people/person";
import type { OverrideRow } from "@/server/domain/rule-books/limit-override";
import { nameOfAthlete } from "./names";
import { newId } from "./new-id";
import { tellFamilyAndCoach } from "./pain";
import { keepRemark } from "./remarks";

/** An override as it is shown, with who gave it. Erased words are empty. */
export interface RecordedOverride extends OverrideRow {
  reason: string;
  byName: string;
}

/** Every override of an athlete, those taken back included, latest first. */
export async function listOverrides(db: Db, athleteId: string): Promise<RecordedOverride[]> {
  const rows = await db
    .select({
      id: limitOverride.id,
      day: limitOverride.day,
      pitches: limitOverride.pitches,
      atMs: limitOverride.atMs,
      reason: remark.text,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(limitOverride)
    .leftJoin(remark, eq(remark.id, limitOverride.reasonRemarkId))
    .leftJoin(person, eq(person.id, limitOverride.byPersonId))
    .where(eq(limitOverride.athleteId, athleteId))
    .orderBy(desc(limitOverride.atMs), desc(limitOverride.id));
  return rows.map(({ givenName, familyName, reason, ...row }) => ({
    ...row,
    reason: reason ?? "",
    byName: fullName({ givenName: givenName ?? "", familyName: familyName ?? "" }),
  }));
}

/** Appends an override. @param override `reason`: not blank */
export async function insertOverride(
  tx: Db,
  override: {
    athleteId: string;
    day: string;
    pitches: number;
    reason: string;
    byPersonId: string;
    atMs: number;
  },
): Promise<void> {
  const { reason, ...row } = override;
  const reasonRemarkId = (await keepRemark(tx, reason)) ?? "";
  await tx.insert(limitOverride).values({ id: newId("lov"), ...row, reasonRemarkId });
}

/** Tells the family and the coach of an override; without a coach, every admin. Goes with {@link insertOverride}. */
export async function tellOfOverride(
  tx: Db,
  athleteId: string,
  told: Omit<ToldOverride, "name">,
  nowMs: number,
): Promise<void> {
  const name = fullName(await nameOfAthlete(tx, athleteId));
  await tellFamilyAndCoach(tx, athleteId, nowMs, overrideNotice({ ...told, name }));
}
