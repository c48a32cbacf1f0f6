import { listCheckpoints } from "@/server/data/checkpoints";
import { NAMELESS, namesOf } from "@/server/data/names";
import { watchedCorrections } from "@/server/data/watched-corrections";
import { DELIVERY_PHASES } from "@/server/domain/mechanics/delivery";
import {
  holdingLedger,
  type LedgerChoice,
  type LedgerCorrection,
} from "@/server/domain/mechanics/holding-ledger";
import { fullName } from "@/server/domain/people/person";
import type { Scope } from "../context";
import type { HoldingLedgerView } from "./holding-shape";

/** The academy's ledger of corrections: how long those that are chosen take to hold, with names. */
export async function holdingFor(
  { db, nowMs }: Pick<Scope, "db" | "nowMs">,
  choice: LedgerChoice,
): Promise<HoldingLedgerView> {
  const corrections = await watchedCorrections(db, nowMs);
  const checkpoints = await listCheckpoints(db);
  const coachIds = idsOf(corrections, ({ coachId }) => coachId);
  const names = await namesOf(db, [...coachIds]);
  const coachName = (id: string) => fullName(names.get(id) ?? NAMELESS);
  const checkpointNames = new Map(checkpoints.map(({ id, name }) => [id, name]));
  const checkpointName = (id: string) => checkpointNames.get(id) ?? id;
  const ledger = holdingLedger(corrections, choice);
  const corrected = idsOf(corrections, ({ checkpointId }) => checkpointId);
  const phases = idsOf(corrections, ({ phase }) => phase);
  return {
    ...ledger,
    onRecord: corrections.length,
    choices: {
      phases: DELIVERY_PHASES.filter((phase) => phases.has(phase)),
      checkpoints: checkpoints.filter(({ id }) => corrected.has(id)).map(({ id, name }) => ({ id, name })),
      coaches: [...coachIds]
        .map((id) => ({ id, name: coachName(id) }))
        .sort((one, other) => one.name.localeCompare(other.name)),
    },
    byCheckpoint: ledger.byCheckpoint.map((group) => ({ ...group, name: checkpointName(group.key) })),
    byCoach: ledger.byCoach.map((group) => ({ ...group, name: coachName(group.key) })),
    drills: ledger.drills.map((each) => ({ ...each, checkpointName: checkpointName(each.checkpointId) })),
  };
}

function idsOf<Id extends string>(
  corrections: readonly LedgerCorrection[],
  idOf: (each: LedgerCorrection) => Id,
): Set<Id> {
  return new Set(corrections.map(idOf));
}
