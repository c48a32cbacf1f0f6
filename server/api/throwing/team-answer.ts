import { z } from "zod";
import { listBooks } from "@/server/data/rule-books";
import { teamsOf } from "@/server/data/teams";
import { may } from "@/server/domain/access/rights";
import { whyNotOffered } from "@/server/domain/rule-books/book-choice";
import type { Scope } from "../context";

/** A team as it is shown, with the book it plays by. */
export const teamAnswer = z.strictObject({
  id: z.string(),
  name: z.string(),
  bookName: z.string(),
  hasEnded: z.boolean(),
});

/** The athlete's teams, whether the one who looks may add and end them, and the books a new one can play by. */
export const teamsAnswer = z.strictObject({
  teams: z.array(teamAnswer),
  mayManage: z.boolean(),
  /** Empty for those who may not manage. */
  books: z.array(z.strictObject({ id: z.string(), name: z.string() })),
});

/** Reads the teams of the athlete in hand for one who looks at them. */
export async function teamsFor({ db, athlete, relations }: Scope): Promise<z.output<typeof teamsAnswer>> {
  const all = await listBooks(db);
  const names = new Map(all.map(({ book }) => [book.id, book.name]));
  const mayManage = may("team.manage", relations);
  const teams = await teamsOf(db, athlete.athleteId);
  return {
    teams: teams.map(({ id, name, ruleBookId, endedAtMs }) => ({
      ...{ id, name, hasEnded: endedAtMs !== null },
      bookName: names.get(ruleBookId) ?? "",
    })),
    mayManage,
    books: mayManage ? offered(all) : [],
  };
}

/** The books that can be chosen anew. */
export function offered(all: Awaited<ReturnType<typeof listBooks>>): { id: string; name: string }[] {
  return all
    .filter(({ confirmation, ...each }) => !whyNotOffered({ ...each, isConfirmed: confirmation !== null }))
    .map(({ book }) => ({ id: book.id, name: book.name }));
}
