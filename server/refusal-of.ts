import { Refusal } from "@/server/domain/errors/refusal";

/** What the database and the file system say when nothing more can be written. */
const FULL = ["SQLITE_FULL", "ENOSPC", "EDQUOT"];

/** The refusal that a thrown thing stands for: itself, or that the disk is full; null for a fault. */
export function refusalOf(error: unknown): Refusal | null {
  if (error instanceof Refusal) return error;
  return isDiskFull(error) ? new Refusal({ reason: "disk_full" }) : null;
}

function isDiskFull(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  return ("code" in error && FULL.includes(String(error.code))) || isDiskFull(error.cause);
}
