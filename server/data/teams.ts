import { and, asc, eq, isNull, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athleteTeam } from "@/db/schema/throwing";
import type { AthleteScope } from "@/server/domain/access/relation";
import { athleteScope } from "./access";
import { newId } from "./new-id";

/** A team or league an athlete pitches for. `endedAtMs` null: they still do. */
export interface AthleteTeam {
  id: string;
  name: string;
  ruleBookId: string;
  endedAtMs: number | null;
}

/** Every team an athlete has or had, by name, those that ended last. */
export async function teamsOf(db: Db, athleteId: string): Promise<AthleteTeam[]> {
  const { id, name, ruleBookId, endedAtMs } = athleteTeam;
  return db
    .select({ id, name, ruleBookId, endedAtMs })
    .from(athleteTeam)
    .where(eq(athleteTeam.athleteId, athleteId))
    .orderBy(sql`${endedAtMs} IS NOT NULL`, asc(sql`lower(${name})`), asc(id));
}

/** Adds a team. @returns its id */
export async function insertTeam(
  tx: Db,
  team: {
    athleteId: string;
    name: string;
    ruleBookId: string;
    addedByPersonId: string;
    addedAtMs: number;
  },
): Promise<string> {
  const id = newId("tea");
  await tx.insert(athleteTeam).values({ id, ...team });
  return id;
}

/** What access needs of the athlete a team is of, or null when there is no such team. */
export async function teamScope(db: Db, teamId: string): Promise<AthleteScope | null> {
  const [row] = await db
    .select({ athleteId: athleteTeam.athleteId })
    .from(athleteTeam)
    .where(eq(athleteTeam.id, teamId));
  return row ? athleteScope(db, row.athleteId) : null;
}

/** Ends a team: its book binds no longer, what was logged for it stays. One that was ended already stays as it is. */
export async function endTeam(tx: Db, teamId: string, nowMs: number): Promise<void> {
  await tx
    .update(athleteTeam)
    .set({ endedAtMs: nowMs })
    .where(and(eq(athleteTeam.id, teamId), isNull(athleteTeam.endedAtMs)));
}
