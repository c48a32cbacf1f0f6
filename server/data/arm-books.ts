import { and, inArray, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete } from "@/db/schema/people";
import { athleteTeam, limitOverride } from "@/db/schema/throwing";
import { standingOverrides } from "@/server/domain/rule-books/limit-override";
import type { ArmQuestion, LimitOverride } from "@/server/domain/throwing/pitches-allowed";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { booksById } from "./rule-books";

/**
 * The books each arm goes by, by athlete id: the athlete's own first, then those of the teams they pitch for now, each
 * once. Unknown athletes are left out.
 * @throws Error when a book is nowhere (the caller's fault: books are never deleted)
 */
export async function booksOfArms(
  db: Db,
  athleteIds: readonly string[],
): Promise<Map<string, ArmQuestion["books"]>> {
  const ids = [...athleteIds];
  const own = await db
    .select({ athleteId: athlete.id, bookId: athlete.ruleBookId })
    .from(athlete)
    .where(inArray(athlete.id, ids));
  const teams = await db
    .select({ athleteId: athleteTeam.athleteId, bookId: athleteTeam.ruleBookId })
    .from(athleteTeam)
    .where(and(inArray(athleteTeam.athleteId, ids), isNull(athleteTeam.endedAtMs)))
    .orderBy(athleteTeam.addedAtMs, athleteTeam.id);
  const books = await booksById(db, new Set([...own, ...teams].map((row) => row.bookId)));
  const known = (bookId: string): RuleBook => {
    const book = books.get(bookId);
    if (!book) throw new Error(`There is no rule book ${bookId}.`);
    return book;
  };
  return new Map(
    own.map(({ athleteId, bookId }) => {
      const others = teams.filter((team) => team.athleteId === athleteId && team.bookId !== bookId);
      const more = [...new Set(others.map((team) => team.bookId))].map(known);
      return [athleteId, [known(bookId), ...more]];
    }),
  );
}

/** The overrides of limits that stand, by athlete id. */
export async function overridesOfArms(
  db: Db,
  athleteIds: readonly string[],
): Promise<Map<string, LimitOverride[]>> {
  const rows = await db
    .select({
      id: limitOverride.id,
      athleteId: limitOverride.athleteId,
      day: limitOverride.day,
      pitches: limitOverride.pitches,
      atMs: limitOverride.atMs,
    })
    .from(limitOverride)
    .where(inArray(limitOverride.athleteId, [...athleteIds]))
    .orderBy(limitOverride.atMs, limitOverride.id);
  const byAthlete = new Map<string, typeof rows>();
  for (const row of rows) byAthlete.set(row.athleteId, [...(byAthlete.get(row.athleteId) ?? []), row]);
  return new Map([...byAthlete].map(([athleteId, own]) => [athleteId, standingOverrides(own)]));
}
