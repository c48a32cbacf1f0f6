import { z } from "zod";
import type { Db } from "@/db/client";
import {
  insertCheckpoints,
  type KeptCheckpoint,
  listCheckpoints,
  saveCheckpoint,
} from "@/server/data/checkpoints";
import { Refusal } from "@/server/domain/errors/refusal";
import { type Checkpoint, checkpointSchema } from "@/server/domain/mechanics/checkpoint";
import { checkpointIdFrom } from "@/server/domain/mechanics/checkpoint-id";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { router } from "../trpc";

const id = z.string().min(1).max(60);
const version = z.int().min(1);
const whole = checkpointSchema.omit({ id: true, active: true });
/** What stays the same for good: judgements name the checkpoint, and their frame is the event's. */
const words = whole.omit({ phase: true, event: true });

export const checkpointsRouter = router({
  /** Every checkpoint, those put aside included, in the delivery's order. */
  list: query({
    action: "academy.staffView",
    input: z.strictObject({}),
    output: z.array(checkpointSchema.extend({ version })),
    run: ({ db }) => listCheckpoints(db),
  }),

  /** Adds a checkpoint of the academy's own. */
  add: command({
    action: "academy.edit",
    input: whole,
    output: z.strictObject({ checkpointId: id }),
    async run(scope, input) {
      const taken = new Set((await listCheckpoints(scope.db)).map((each) => each.id));
      const checkpointId = checkpointIdFrom(input.name, taken);
      await insertCheckpoints(scope.db, [{ ...input, id: checkpointId, active: true }]);
      await noteAct(scope, "checkpoint.added", checkpointId, { phase: input.phase });
      return { checkpointId };
    },
  }),

  /** Changes the words, views, cues and drills of a checkpoint. */
  edit: command({
    action: "academy.edit",
    input: words.extend({ id, version }),
    output: done,
    run: (scope, { version: at, ...changed }) => change(scope, at, changed.id, changed, "checkpoint.edited"),
  }),

  /** Offers a checkpoint in reviews, or puts it aside; what was judged by it stays readable. */
  setActive: command({
    action: "academy.edit",
    input: z.strictObject({ id, version, active: z.boolean() }),
    output: done,
    run: (scope, { version: at, id: of, active }) =>
      change(scope, at, of, { active }, active ? "checkpoint.offered" : "checkpoint.put_aside"),
  }),
});

async function change(
  scope: Parameters<typeof noteAct>[0],
  version: number,
  checkpointId: string,
  changed: Partial<Checkpoint>,
  action: string,
) {
  const { version: _, ...before } = await kept(scope.db, checkpointId);
  if (!(await saveCheckpoint(scope.db, { ...before, ...changed }, version))) {
    throw new Refusal({ reason: "changed_meanwhile" });
  }
  await noteAct(scope, action, checkpointId);
  return DONE;
}

async function kept(db: Db, checkpointId: string): Promise<KeptCheckpoint> {
  const found = (await listCheckpoints(db)).find((each) => each.id === checkpointId);
  if (!found) throw new Refusal({ reason: "not_found" });
  return found;
}
