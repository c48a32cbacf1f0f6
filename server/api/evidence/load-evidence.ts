import { listCheckpoints } from "@/server/data/checkpoints";
import { type CorrectionRecord, correctionsOf } from "@/server/data/corrections";
import { dayRepeats, observationsOf } from "@/server/data/observations";
import {
  type AskedFor,
  type AthleteEvidence,
  athleteEvidence,
} from "@/server/domain/mechanics/athlete-evidence";
import { errorsOfSeries } from "@/server/domain/mechanics/series-error";
import { statedDirection } from "@/server/domain/mechanics/wanted-direction";
import { type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";

/** The evidence of the athlete in hand, beside the records it was made of. */
export interface LoadedEvidence extends AthleteEvidence {
  corrections: CorrectionRecord[];
  checkpoints: Awaited<ReturnType<typeof listCheckpoints>>;
}

/** What is told of a season: what was seen until its last day, since the corrections that were worked on in it. */
export interface EvidenceWithin {
  untilOn: CalendarDay;
  correctionIds: ReadonlySet<string>;
}

/** Reads all that was judged and measured of the athlete in hand, or of one season, and tells what it carries. */
export async function loadEvidence(
  { db, athlete }: Pick<Scope, "db" | "athlete">,
  within?: EvidenceWithin,
): Promise<LoadedEvidence> {
  const isKnown = (day: CalendarDay) => within === undefined || day <= within.untilOn;
  const given = await correctionsOf(db, athlete.athleteId);
  const [observations, corrections, checkpoints, repeats] = [
    (await observationsOf(db, athlete.athleteId)).filter(({ day }) => isKnown(day)),
    given.filter(({ givenAtMs }) => isKnown(dayOf(givenAtMs, athlete.zone))),
    await listCheckpoints(db),
    await dayRepeats(db),
  ];
  const filmedOn = new Map(observations.map(({ clipId, day }) => [clipId, day]));
  const wantedBy = new Map(checkpoints.map(({ id, wanted }) => [id, wanted]));
  const evidence = athleteEvidence({
    observations,
    corrections: corrections.map(
      ({ id, checkpointId, givenAtMs, clipId, wanted, wantedTo }): AskedFor => ({
        ...{ id, checkpointId, givenOn: dayOf(givenAtMs, athlete.zone) },
        seenOn: clipId === null ? null : (filmedOn.get(clipId) ?? null),
        wanted: statedDirection({ wanted, wantedTo }),
      }),
    ),
    wantedOf: (checkpointId) => wantedBy.get(checkpointId) ?? null,
    errorOf: errorsOfSeries(repeats),
    ...(within ? { isAskedFor: (id) => within.correctionIds.has(id) } : {}),
  });
  return { ...evidence, corrections, checkpoints };
}
