import { z } from "zod";
import { listOverrides } from "@/server/data/limit-overrides";
import { may } from "@/server/domain/access/rights";
import { standingOverrides } from "@/server/domain/rule-books/limit-override";
import type { Scope } from "../context";

/** Every override of an athlete's limits, latest first, and whether the one who looks may give one. */
export const overridesAnswer = z.strictObject({
  mayOverride: z.boolean(),
  overrides: z.array(
    z.strictObject({
      id: z.string(),
      day: z.string(),
      pitches: z.number(),
      atMs: z.number(),
      reason: z.string(),
      byName: z.string(),
      /** False for one that a later one of the day replaced, and for the one that took it back. */
      stands: z.boolean(),
    }),
  ),
});

/** Reads the overrides of the athlete in hand. */
export async function overridesOfAthlete(scope: Scope): Promise<z.output<typeof overridesAnswer>> {
  const rows = await listOverrides(scope.db, scope.athlete.athleteId);
  const standing = new Set(standingOverrides(rows).map(({ id }) => id));
  return {
    mayOverride: may("throwing.override", scope.relations),
    overrides: rows.map((row) => ({ ...row, stands: standing.has(row.id) })),
  };
}
