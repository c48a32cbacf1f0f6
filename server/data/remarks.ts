import { eq } from "drizzle-orm";
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

/** The words kept under an id; empty when they were erased, or for no id. */
export async function remarkText(db: Db, remarkId: string | null): Promise<string> {
  if (remarkId === null) return "";
  const [row] = await db.select({ text: remark.text }).from(remark).where(eq(remark.id, remarkId));
  return row?.text ?? "";
}
