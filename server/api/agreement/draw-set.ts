import { seenFrames } from "@/server/data/blind-frames";
import { keepBlindSet } from "@/server/data/blind-sets";
import { listCheckpoints } from "@/server/data/checkpoints";
import { newId } from "@/server/data/new-id";
import { Refusal } from "@/server/domain/errors/refusal";
import { drawBlindFrames } from "@/server/domain/mechanics/blind-draw";
import { blindPool, poolCounts } from "@/server/domain/mechanics/blind-pool";
import type { Scope } from "../context";
import { noteAct } from "../note-act";
import type { DrawInput, PoolView } from "./shapes";

/** How many frames there are to draw from, by checkpoint, view and what is done with them. */
export async function loadPool({ db }: Pick<Scope, "db">): Promise<PoolView> {
  const checkpoints = (await listCheckpoints(db)).filter(({ active }) => active);
  return {
    checkpoints: checkpoints.map(({ id, name }) => ({ id, name })),
    counts: poolCounts(checkpoints, await seenFrames(db)),
  };
}

/**
 * Draws a set by chance and keeps it; the set's own id is the seed.
 * @throws Refusal `not_found` for a checkpoint that is none, `too_few_frames`
 */
export async function drawSet(scope: Scope, asked: DrawInput): Promise<{ setId: string }> {
  const { db, actor, nowMs } = scope;
  const checkpoints = await listCheckpoints(db);
  const seen = await seenFrames(db);
  const pool = [...new Set(asked.checkpointIds)].flatMap((id) => {
    const checkpoint = checkpoints.find((each) => each.id === id && each.active);
    if (!checkpoint) throw new Refusal({ reason: "not_found" });
    return blindPool(asked.way, checkpoint, seen).filter(({ view }) => view === asked.view);
  });
  if (pool.length < asked.frames) {
    throw new Refusal({ reason: "too_few_frames", asked: asked.frames, there: pool.length });
  }
  const setId = newId("bls");
  const set = { id: setId, name: asked.name, madeByPersonId: actor.personId, madeAtMs: nowMs };
  await keepBlindSet(db, set, drawBlindFrames(pool, asked.frames, setId));
  const { way, view, frames } = asked;
  await noteAct(scope, "agreement.drawn", setId, { way, view, frames, of: pool.length });
  return { setId };
}
