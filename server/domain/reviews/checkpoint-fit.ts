import { type Checkpoint, canBeJudgedFrom } from "@/server/domain/mechanics/checkpoint";
import { CAMERA_VIEW_WORDS, type CameraView, type Phase } from "@/server/domain/mechanics/delivery";
import type { DraftJudgement } from "./draft";

/** What a draft says of checkpoints; a check has neither keeps nor corrections. */
export interface CheckpointUse {
  judgements: readonly DraftJudgement[];
  keeps?: readonly { checkpointId: string | null; phase: Phase }[];
  corrections?: readonly { checkpointId: string; phase: Phase }[];
  measures?: readonly { checkpointId: string | null }[];
  marks?: readonly { checkpointId: string | null }[];
}

/** What it is held against: all checkpoints, those put aside included, and the camera view of each clip. */
export interface CheckpointFacts {
  checkpoints: readonly Pick<Checkpoint, "id" | "name" | "phase" | "views">[];
  viewOfClip: ReadonlyMap<string, CameraView | null>;
}

/**
 * Where a draft does not fit the academy's checkpoints, as fragments for one sentence; empty when it fits. One put
 * aside since is no fault: what was begun with it may be finished. A judgement needs a view it can be made from; a
 * clip without a view allows every checkpoint.
 */
export function misfits(draft: CheckpointUse, facts: CheckpointFacts): string[] {
  const find = (id: string) => facts.checkpoints.find((each) => each.id === id);
  const named = [...(draft.keeps ?? []), ...(draft.corrections ?? [])].filter(
    (row) => row.checkpointId !== null,
  );
  const ids = [
    ...named.map((row) => row.checkpointId ?? ""),
    ...draft.judgements.map((row) => row.checkpointId),
    ...placedOn(draft),
  ];
  const unknown = ids.some((id) => find(id) === undefined) ? ["a checkpoint is named that there is not"] : [];
  const outOfPhase = named.flatMap((row) => {
    const checkpoint = find(row.checkpointId ?? "");
    if (checkpoint === undefined || checkpoint.phase === row.phase) return [];
    return [`${checkpoint.name} is marked in another phase than its own`];
  });
  const unseen = draft.judgements.flatMap((row) => {
    const checkpoint = find(row.checkpointId);
    const view = facts.viewOfClip.get(row.clipId) ?? null;
    if (checkpoint === undefined || view === null || canBeJudgedFrom(checkpoint, view)) return [];
    return [`${checkpoint.name} cannot be judged from the ${CAMERA_VIEW_WORDS[view].toLowerCase()}`];
  });
  return [...new Set([...unknown, ...outOfPhase, ...unseen])];
}

/** The checkpoints that measures and marks of a draft name. */
function placedOn({ measures = [], marks = [] }: CheckpointUse): string[] {
  return [...measures, ...marks].flatMap(({ checkpointId }) => (checkpointId === null ? [] : [checkpointId]));
}
