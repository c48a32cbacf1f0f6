import type { TRPCError } from "@trpc/server";
import { logFault } from "@/server/log-fault";

/** Logs a full disk, so that somebody makes room; logs a broken invariant with its cause, and gives the caller a reference number in place of the details. */
export function reportFault(error: TRPCError, path: string): void {
  if (error.code === "SERVICE_UNAVAILABLE")
    logFault(error.cause, { path }, "a procedure found the disk full");
  if (error.code !== "INTERNAL_SERVER_ERROR") return;
  const reference = logFault(error.cause ?? error, { path }, "a procedure failed");
  error.message = `Something went wrong here, not with you. Nothing was saved. Try again; if it stays, tell the academy this number: ${reference}.`;
}
