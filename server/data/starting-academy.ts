import type { Db } from "@/db/client";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { STARTING_SETTINGS } from "@/server/domain/people/academy-settings";
import type { StartingAcademy } from "@/server/domain/people/starting-academy";
import { insertAcademy } from "./academy-settings";
import { grantRole, insertAccount } from "./accounts-of-people";
import { insertPerson } from "./athlete-records";
import { insertCheckpoints } from "./checkpoints";
import { insertSite } from "./sites";

/**
 * Writes an academy that nobody has used yet: settings, first site, starting checkpoints, first admin.
 * @returns the admin's person id
 */
export async function insertStartingAcademy(
  tx: Db,
  start: StartingAcademy,
  facts: { passwordHash: string; nowMs: number },
): Promise<string> {
  const { academyName: name, currency, siteName, zone, email } = start;
  const { nowMs, passwordHash } = facts;
  await insertAcademy(tx, { ...STARTING_SETTINGS, name, currency }, { isDemo: false, nowMs });
  await insertSite(tx, { name: siteName, zone, address: "" });
  await insertCheckpoints(tx, STARTING_LIBRARY);
  const { givenName, familyName } = start;
  const personId = await insertPerson(tx, { givenName, familyName, email, phone: null }, nowMs);
  await insertAccount(tx, { personId, email, passwordHash, nowMs });
  await grantRole(tx, personId, "admin");
  if (start.isCoach) await grantRole(tx, personId, "coach");
  return personId;
}
