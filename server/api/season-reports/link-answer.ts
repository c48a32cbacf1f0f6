import { z } from "zod";
import { reportLinksOf } from "@/server/data/report-links";
import { fullName } from "@/server/domain/people/person";
import { LINK_STATES } from "@/server/domain/season-reports/report-link";
import type { Scope } from "../context";

/** A link as those see it who may open the athlete's pages; never its address, which is nowhere kept. */
export const linkAnswer = z.strictObject({
  id: z.string(),
  fromOn: z.string(),
  toOn: z.string(),
  byName: z.string(),
  madeAtMs: z.number(),
  expiresAtMs: z.number(),
  revokedAtMs: z.number().nullable(),
  state: z.enum(LINK_STATES),
});

/** The links of the athlete in hand, the latest first, whichever season they open. */
export async function linksFor({ db, athlete, nowMs }: Scope): Promise<z.output<typeof linkAnswer>[]> {
  const links = await reportLinksOf(db, athlete, nowMs);
  return links.map(({ athleteId, madeByPersonId, byGivenName, byFamilyName, ...link }) => ({
    ...link,
    byName: fullName({ givenName: byGivenName, familyName: byFamilyName }),
  }));
}
