import { desc, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { correction } from "@/db/schema/corrections";
import { person } from "@/db/schema/people";
import { round } from "@/db/schema/rounds";
import { fullName } from "@/server/domain/people/person";
import { isOpen } from "@/server/domain/reviews/correction-state";

/** Every round of an athlete, the latest first, with how many corrections it gave and how many of them are open. */
export async function roundListOf(db: Db, athleteId: string) {
  const rows = await db
    .select({
      id: round.id,
      state: round.state,
      receivedAtMs: round.receivedAtMs,
      sentAtMs: round.sentAtMs,
      settledAtMs: round.settledAtMs,
      givenName: person.givenName,
      familyName: person.familyName,
    })
    .from(round)
    .leftJoin(person, eq(person.id, round.coachPersonId))
    .where(eq(round.athleteId, athleteId))
    .orderBy(desc(round.receivedAtMs), desc(round.id));
  const given = await db
    .select({ roundId: correction.roundId, state: correction.state })
    .from(correction)
    .where(eq(correction.athleteId, athleteId));
  return rows.map(({ givenName, familyName, ...row }) => {
    const own = given.filter((each) => each.roundId === row.id);
    const coachName = givenName === null ? null : fullName({ givenName, familyName: familyName ?? "" });
    return {
      ...row,
      coachName,
      givenCount: own.length,
      openCount: own.filter((each) => isOpen(each.state)).length,
    };
  });
}
