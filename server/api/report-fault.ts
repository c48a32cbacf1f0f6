import { randomBytes } from "node:crypto";
import type { TRPCError } from "@trpc/server";
import { log } from "@/server/log";

/** Logs a broken invariant with its cause, and gives the caller a reference number in place of the details. */
export function reportFault(error: TRPCError, path: string): void {
  if (error.code !== "INTERNAL_SERVER_ERROR") return;
  const reference = randomBytes(4).toString("hex");
  log.error({ reference, path, cause: error.cause ?? error }, "a procedure failed");
  error.message = `Something went wrong here, not with you. Nothing was saved. Try again; if it stays, tell the academy this number: ${reference}.`;
}
