import { headers } from "next/headers";
import { callerAddress } from "@/server/auth/caller-address";
import { currentActor } from "@/server/auth/current-actor";
import { nowMs } from "@/server/clock";
import { connections } from "@/server/data/connections";
import { env } from "@/server/env";
import type { Context } from "./context";
import { requestIdIn } from "./request-guard";

/** The context of the request in progress. */
export async function requestContext(): Promise<Context> {
  const sent = await headers();
  return {
    connections: connections(env.databasePath),
    actor: await currentActor(),
    nowMs: nowMs(),
    requestId: requestIdIn(sent),
    address: callerAddress(sent.get("x-forwarded-for")),
  };
}
