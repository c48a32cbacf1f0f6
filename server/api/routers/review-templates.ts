import { z } from "zod";
import type { Db } from "@/db/client";
import { listCheckpoints } from "@/server/data/checkpoints";
import {
  findTemplate,
  insertTemplate,
  type KeptTemplate,
  listTemplates,
  saveTemplate,
} from "@/server/data/review-templates";
import { Refusal } from "@/server/domain/errors/refusal";
import { reviewTemplateSchema, type TemplateLine } from "@/server/domain/reviews/review-template";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command, query } from "../procedures";
import { templateShape } from "../reviews/template-shape";
import { router } from "../trpc";

const id = z.string().min(1).max(64);
const version = z.int().min(1);

export const reviewTemplatesRouter = router({
  /** What the academy usually says, by age group; those put aside included. */
  list: query({
    action: "academy.staffView",
    input: z.strictObject({}),
    output: z.array(templateShape),
    run: ({ db }) => listTemplates(db),
  }),

  /** Adds a template of an age group. */
  add: command({
    action: "academy.edit",
    input: z.strictObject({ template: reviewTemplateSchema }),
    output: z.strictObject({ templateId: z.string() }),
    async run(scope, { template }) {
      await refuseUnknown(scope.db, template.lines);
      const templateId = await insertTemplate(scope.db, template);
      await noteAct(scope, "template.added", templateId, { lines: template.lines.length });
      return { templateId };
    },
  }),

  /** Saves a template over the version it was read at. */
  edit: command({
    action: "academy.edit",
    input: z.strictObject({ id, version, template: reviewTemplateSchema }),
    output: done,
    async run(scope, input) {
      await refuseUnknown(scope.db, input.template.lines);
      return change(scope, input, input.template, "template.edited");
    },
  }),

  /** Offers a template in the review room, or puts it aside. */
  setActive: command({
    action: "academy.edit",
    input: z.strictObject({ id, version, active: z.boolean() }),
    output: done,
    run: (scope, { active, ...at }) =>
      change(scope, at, { active }, active ? "template.offered" : "template.put_aside"),
  }),
});

async function change(
  scope: Parameters<typeof noteAct>[0],
  at: { id: string; version: number },
  changed: Partial<KeptTemplate>,
  action: string,
) {
  const before = await findTemplate(scope.db, at.id);
  if (!before) throw new Refusal({ reason: "not_found" });
  const isSaved = await saveTemplate(scope.db, { ...before, ...changed, version: at.version });
  if (!isSaved) throw new Refusal({ reason: "changed_meanwhile" });
  await noteAct(scope, action, at.id);
  return DONE;
}

/** Every line names a checkpoint of the academy; one that was put aside may stay. */
async function refuseUnknown(db: Db, lines: readonly TemplateLine[]): Promise<void> {
  const known = new Set((await listCheckpoints(db)).map((each) => each.id));
  if (lines.some((line) => !known.has(line.checkpointId))) throw new Refusal({ reason: "not_found" });
}
