import { TRPCError } from "@trpc/server";
import { getHTTPStatusCodeFromError } from "@trpc/server/http";
import type { Refusal } from "@/server/domain/errors/refusal";
import { logFault } from "@/server/log-fault";
import { refusalOf } from "@/server/refusal-of";
import { REFUSAL_CODES } from "./refusal-codes";

const HEADERS = { "cache-control": "no-store", "x-content-type-options": "nosniff" };

/** A refusal as the answer of a route handler: the status its reason travels under, the reason and the sentence. */
export function refusalResponse(refusal: Refusal): Response {
  const { detail, message } = refusal;
  const code = REFUSAL_CODES[detail.reason];
  const status = getHTTPStatusCodeFromError(new TRPCError({ code }));
  return Response.json({ problem: detail.reason, sentence: message }, { status, headers: HEADERS });
}

/** Whatever a route handler threw: a refusal or a full disk in words, anything else logged under a number the caller is told. */
export function faultResponse(error: unknown, path: string): Response {
  const refusal = refusalOf(error);
  if (refusal && refusal !== error) logFault(error, { path }, "a route handler found the disk full");
  if (refusal) return refusalResponse(refusal);
  const reference = logFault(error, { path }, "a route handler failed");
  const sentence = `Something went wrong here, not with you. Nothing was kept. Try again; if it stays, tell the academy this number: ${reference}.`;
  return Response.json({ problem: "fault", sentence }, { status: 500, headers: HEADERS });
}
