import { createHmac } from "node:crypto";
import superjson from "superjson";
import type { Db } from "@/db/client";
import { findGivenAnswer, keepGivenAnswer } from "@/server/data/given-answers";
import { Refusal } from "@/server/domain/errors/refusal";
import { env } from "@/server/env";
import type { Context } from "./context";

/** A command on its way: who sent it under which id, what it does, and with what. */
export interface SentCommand {
  context: Context;
  path: string;
  input: unknown;
}

/**
 * The answer this very command was given before, or null when it is new or carries no id.
 * @throws Refusal `repeated_with_other_content` when its id was another command's
 */
export async function earlierAnswer<Answer>(db: Db, sent: SentCommand): Promise<{ answer: Answer } | null> {
  const { requestId } = sent.context;
  const before = requestId ? await findGivenAnswer(db, requestId) : null;
  if (!before) return null;
  if (before.fingerprint !== fingerprintOf(sent))
    throw new Refusal({ reason: "repeated_with_other_content" });
  return { answer: superjson.parse<Answer>(before.answer) };
}

/**
 * Does the work and keeps its answer in the same transaction; a repeat gets the answer kept and changes nothing.
 * @param kept what is kept in place of an answer that holds a secret
 */
export async function answerOnce<Answer>(
  tx: Db,
  sent: SentCommand,
  work: () => Promise<Answer>,
  kept: (answer: Answer) => Answer = (answer) => answer,
): Promise<Answer> {
  const before = await earlierAnswer<Answer>(tx, sent);
  if (before) return before.answer;
  const answer = await work();
  const { requestId, actor, nowMs } = sent.context;
  if (!requestId) return answer;
  await keepGivenAnswer(tx, {
    requestId,
    personId: actor?.personId ?? null,
    path: sent.path,
    fingerprint: fingerprintOf(sent),
    answer: superjson.stringify(kept(answer)),
    atMs: nowMs,
  });
  return answer;
}

/* Keyed, since some content is a password: who holds a copy of the database alone cannot try guesses against it. */
function fingerprintOf({ context, path, input }: SentCommand): string {
  const content = JSON.stringify([context.actor?.personId ?? null, path, superjson.stringify(input)]);
  return createHmac("sha256", env.AUTH_SECRET ?? "")
    .update(content)
    .digest("hex");
}
