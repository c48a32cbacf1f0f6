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
import { dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";

/** The evidence of the athlete in hand, beside the records it was made of. */
export interface LoadedEvidence extends AthleteEvidence {
  corrections: CorrectionRecord[];
  checkpoints: Awaited<ReturnType<typeof listCheckpoints>>;
}

/** Reads all that was judged and measured of the athlete in hand, and tells what it carries. */
export async function loadEvidence({ db, athlete }: Scope): Promise<LoadedEvidence> {
  const [observations, corrections, checkpoints, repeats] = [
    await observationsOf(db, athlete.athleteId),
    await correctionsOf(db, athlete.athleteId),
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
  });
  return { ...evidence, corrections, checkpoints };
}
