import { z } from "zod";
import type { Db } from "@/db/client";
import type { AthleteScope } from "@/server/domain/access/relation";
import { seasonChanges as changesOf } from "@/server/domain/season-reports/season-changes";
import type { SeasonSpan } from "@/server/domain/season-reports/season-span";
import { dayOf } from "@/server/domain/time/calendar-day";
import { loadEvidence } from "../evidence/load-evidence";

const change = z.strictObject({
  id: z.string(),
  checkpointName: z.string(),
  seen: z.string(),
  words: z.array(z.string()),
});

/** See `SeasonChanges` of the domain. */
export const seasonChanges = z.strictObject({
  lookedAt: z.int(),
  tooFew: z.int(),
  words: z.array(z.string()),
  told: z.array(change),
  same: z.array(change),
});

/** What changed since the corrections that were worked on in a season, by what was seen until it ended. */
export async function changesFor(
  db: Db,
  athlete: AthleteScope,
  span: SeasonSpan,
  correctionIds: readonly string[],
): Promise<z.output<typeof seasonChanges>> {
  const within = { untilOn: span.toOn, correctionIds: new Set(correctionIds) };
  const { corrections, ...evidence } = await loadEvidence({ db, athlete }, within);
  const given = corrections.map(({ id, checkpointName, givenAtMs }) => ({
    ...{ id, checkpointName },
    givenOn: dayOf(givenAtMs, athlete.zone),
  }));
  return changesOf(evidence, given);
}
