import type { Db } from "@/db/client";
import { remark } from "@/db/schema/people";
import { newId } from "./new-id";

/**
 * Keeps free text apart from the append-only row that refers to it, so that it can be erased.
 * @returns the id to store beside the act, or null for blank text
 */
export async function keepRemark(tx: Db, text: string | null | undefined): Promise<string | null> {
  const trimmed = text?.trim();
  if (!trimmed) return null;
  const id = newId("rmk");
  await tx.insert(remark).values({ id, text: trimmed });
  return id;
}
