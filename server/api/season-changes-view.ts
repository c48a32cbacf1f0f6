import { z } from "zod";
import { checkpointChanges as changesOf } from "@/server/domain/mechanics/checkpoint-changes";
import { CAMERA_VIEWS, DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import { SERIES_KINDS } from "@/server/domain/mechanics/observation";
import { dayOf } from "@/server/domain/time/calendar-day";
import type { LoadedEvidence } from "./evidence/load-evidence";

/** Every checkpoint that was looked at since it was corrected, in the fixed words; how many, and what that means. */
export const checkpointChanges = z.strictObject({
  words: z.array(z.string()),
  all: z.array(
    z.strictObject({
      id: z.string(),
      checkpointId: z.string(),
      checkpointName: z.string(),
      phase: z.enum(DELIVERY_PHASES),
      roundId: z.string(),
      givenOn: z.string(),
      kind: z.enum(SERIES_KINDS),
      view: z.enum(CAMERA_VIEWS).nullable(),
      lastSeenOn: z.string().nullable(),
      outcome: z.enum(["worse", "improved", "changed", "no_change", "too_few"]),
      words: z.string(),
      figures: z.array(z.string()),
    }),
  ),
});

/** The changes of loaded evidence with the names of their checkpoints. */
export function changesSince(evidence: LoadedEvidence, zone: string): z.output<typeof checkpointChanges> {
  const byId = new Map(evidence.corrections.map((each) => [each.id, each]));
  const all = changesOf(evidence).flatMap(({ correctionId, ...change }) => {
    const given = byId.get(correctionId);
    if (given === undefined) return [];
    const { checkpointId, checkpointName, phase, roundId } = given;
    const givenOn = dayOf(given.givenAtMs, zone);
    return [{ ...change, checkpointId, checkpointName, phase, roundId, givenOn }];
  });
  return { words: evidence.many.words, all };
}
