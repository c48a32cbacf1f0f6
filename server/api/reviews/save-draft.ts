import { z } from "zod";
import { keepDraft } from "@/server/data/drafts";
import { Refusal } from "@/server/domain/errors/refusal";
import { checkDraftSchema, reviewDraftSchema } from "@/server/domain/reviews/draft";
import type { Scope } from "../context";
import { roundToWrite } from "./round-parts";
import { idInput } from "./shapes";

/** The version a draft was read at; 0 when there was none. */
export const versionInput = z.int().min(0).max(1_000_000_000);

const toRound = { roundId: idInput, version: versionInput };

/** A draft as it is sent to be kept: whole, with the version it was read at. */
export const draftInput = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("review"), ...toRound, document: reviewDraftSchema }),
  z.strictObject({ kind: z.literal("check"), ...toRound, document: checkDraftSchema }),
]);

/** Keeps a draft over the version it was read at. @throws Refusal `changed_meanwhile` when there is a newer one */
export async function saveDraft(scope: Scope, input: z.output<typeof draftInput>) {
  const { db, actor, nowMs } = scope;
  const round = await roundToWrite(scope, input.roundId, input.kind);
  const { kind, document } = input;
  const version = await keepDraft(db, {
    ...{ roundId: round.id, kind, document, version: input.version },
    coachPersonId: actor.personId,
    nowMs,
  });
  if (version === null) throw new Refusal({ reason: "changed_meanwhile" });
  return { version, savedAtMs: nowMs };
}
