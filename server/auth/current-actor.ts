import { getServerSession } from "next-auth";
import { nowMs } from "@/server/clock";
import { actorOfSignIn } from "@/server/data/access";
import { connections } from "@/server/data/connections";
import type { Actor } from "@/server/domain/access/relation";
import { env } from "@/server/env";
import { authOptions } from "./options";

/** The caller of the request in progress, read from the database; null when not signed in (or no longer). */
export async function currentActor(): Promise<Actor | null> {
  const held = (await getServerSession(authOptions)) as { signInId?: string } | null;
  if (!held?.signInId) return null;
  return actorOfSignIn(connections(env.databasePath).reader, held.signInId, nowMs());
}
