import { and, desc, eq, isNotNull, ne } from "drizzle-orm";
import type { Db } from "@/db/client";
import { round } from "@/db/schema/rounds";
import { session } from "@/db/schema/sessions";

/** A settled round that a session may follow up. */
export interface SettledRound {
  roundId: string;
  coachPersonId: string | null;
  settledAtMs: number;
  /** Whether a session that was not cancelled follows it up already. */
  isFollowedUp: boolean;
}

/** The athlete's settled round by that id, or the latest one; null when there is none. */
export async function settledRound(
  db: Db,
  athleteId: string,
  roundId: string | null,
): Promise<SettledRound | null> {
  const [row] = await db
    .select({ roundId: round.id, coachPersonId: round.coachPersonId, settledAtMs: round.settledAtMs })
    .from(round)
    .where(
      and(
        eq(round.athleteId, athleteId),
        eq(round.state, "settled"),
        isNotNull(round.settledAtMs),
        roundId === null ? undefined : eq(round.id, roundId),
      ),
    )
    .orderBy(desc(round.settledAtMs))
    .limit(1);
  if (!row || row.settledAtMs === null) return null;
  const [follower] = await db
    .select({ id: session.id })
    .from(session)
    .where(and(eq(session.roundId, row.roundId), ne(session.state, "cancelled")));
  return { ...row, settledAtMs: row.settledAtMs, isFollowedUp: follower !== undefined };
}
