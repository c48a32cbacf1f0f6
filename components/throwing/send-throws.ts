import { apiClient } from "@/components/wire/api-client";
import { problemOf } from "@/components/wire/problem";
import type { RefusalReason } from "@/server/domain/errors/reasons";
import type { KeptThrows, Sending } from "./kept-throws";

/** Refusals that say nothing of the throws: the same ones go through another time. */
const NOT_ABOUT_THROWS: readonly RefusalReason[] = ["not_signed_in", "disk_full", "too_many_tries"];

/** Sends throws to the log under the id they were kept with. */
export async function sendThrows(row: Pick<KeptThrows, "id" | "throws">): Promise<Sending> {
  try {
    const input = { ...row.throws, keptId: row.id };
    const { arm } = await apiClient.throwing.log.mutate(input, { context: { requestId: row.id } });
    return { kind: "sent", words: arm.words };
  } catch (error) {
    return outcomeOf(error);
  }
}

/** What a try that failed says of the throws: that they were refused, or nothing yet. */
export function outcomeOf(error: unknown): Sending {
  const { refusal, fields, sentence } = problemOf(error);
  if (refusal) {
    return NOT_ABOUT_THROWS.includes(refusal.reason) ? { kind: "later" } : { kind: "refused", sentence };
  }
  return Object.keys(fields).length > 0 ? { kind: "refused", sentence } : { kind: "later" };
}
