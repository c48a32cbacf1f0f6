import type { Db } from "@/db/client";
import { athleteScope } from "@/server/data/access";
import { sessionScopes } from "@/server/data/sessions";
import type { AthleteScope } from "@/server/domain/access/relation";

/** Everybody named, or null when one of them does not exist. */
export async function locateAll(db: Db, athleteIds: readonly string[]): Promise<AthleteScope[] | null> {
  const scopes = await Promise.all(athleteIds.map((id) => athleteScope(db, id)));
  const found = scopes.filter((scope) => scope !== null);
  return found.length === athleteIds.length ? found : null;
}

/** One athlete of a session, or null when they are not on it. */
export async function locateOnSession(
  db: Db,
  input: { sessionId: string; athleteId: string },
): Promise<AthleteScope | null> {
  const scopes = (await sessionScopes(db, input.sessionId)) ?? [];
  return scopes.find((scope) => scope.athleteId === input.athleteId) ?? null;
}
