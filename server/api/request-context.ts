import { headers } from "next/headers";
import { currentActor } from "@/server/auth/current-actor";
import { nowMs } from "@/server/clock";
import { connections } from "@/server/data/connections";
import { env } from "@/server/env";
import type { Context } from "./context";

const REQUEST_ID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** The context of the request in progress. */
export async function requestContext(): Promise<Context> {
  const sent = await headers();
  const requestId = sent.get("idempotency-key");
  return {
    connections: connections(env.databasePath),
    actor: await currentActor(),
    nowMs: nowMs(),
    requestId: requestId && REQUEST_ID.test(requestId) ? requestId : null,
    address: sent.get("x-forwarded-for")?.split(",")[0]?.trim() ?? "local",
  };
}
