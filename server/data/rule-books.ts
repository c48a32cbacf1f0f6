import { asc, count, inArray, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athlete } from "@/db/schema/people";
import { ruleBookConfirmation, ruleBookVersion } from "@/db/schema/rule-books";
import { athleteTeam } from "@/db/schema/throwing";
import { fullName } from "@/server/domain/people/person";
import type { OwnBookDocument } from "@/server/domain/rule-books/own-book";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { SHIPPED_BOOKS } from "@/server/domain/throwing/shipped-books";
import { namesOf } from "./names";

/** One version of a book of the academy's own, as it was saved. */
export interface BookVersion extends OwnBookDocument {
  version: number;
  basedOnId: string;
  savedByName: string;
  savedAtMs: number;
}

/** Who said of a sample that it is current, and when. */
export interface BookConfirmation {
  byName: string;
  atMs: number;
}

/** A book as it stands. `saved` is null for one that ships. */
export interface KeptBook {
  book: RuleBook;
  isArchived: boolean;
  saved: Omit<BookVersion, keyof OwnBookDocument> | null;
  confirmation: BookConfirmation | null;
}

/**
 * Rule books by id: those that ship, and the academy's own at the version in force at `atMs` (now, when left out). Of one
 * that was not there yet, its first version. Unknown ids are left out.
 */
export async function booksById(
  db: Db,
  ids: Iterable<string>,
  atMs = Number.MAX_SAFE_INTEGER,
): Promise<Map<string, RuleBook>> {
  const wanted = new Set(ids);
  const found = new Map(SHIPPED_BOOKS.filter(({ id }) => wanted.has(id)).map((book) => [book.id, book]));
  const own = [...wanted].filter((id) => !found.has(id));
  if (own.length === 0) return found;
  for (const row of await versionRows(db, own)) {
    if (row.savedAtMs <= atMs || !found.has(row.bookId)) found.set(row.bookId, documentOf(row).book);
  }
  return found;
}

/** Every book: those that ship in their order, then the academy's own by name, those put aside included. */
export async function listBooks(db: Db): Promise<KeptBook[]> {
  const confirmations = await confirmationsOf(db);
  const latest = new Map((await named(db, await versionRows(db))).map((each) => [each.book.id, each]));
  const own = [...latest.values()].sort((a, b) => a.book.name.localeCompare(b.book.name));
  return [
    ...SHIPPED_BOOKS.map((book) => ({ book, isArchived: false, saved: null })),
    ...own.map(({ book, isArchived, ...saved }) => ({ book, isArchived, saved })),
  ].map((each) => ({ ...each, confirmation: confirmations.get(each.book.id) ?? null }));
}

/** One book as it stands, or null. */
export async function findBook(db: Db, bookId: string): Promise<KeptBook | null> {
  return (await listBooks(db)).find(({ book }) => book.id === bookId) ?? null;
}

/** Every version of a book of the academy's own, latest first; empty for any other. */
export async function bookVersions(db: Db, bookId: string): Promise<BookVersion[]> {
  return (await named(db, await versionRows(db, [bookId]))).reverse();
}

/**
 * Appends a version after the one it was read at.
 * @param read 0 for the first version of a new book
 * @returns false when somebody saved in between; nothing is written then
 */
export async function saveBookVersion(
  tx: Db,
  { book, isArchived }: OwnBookDocument,
  facts: { read: number; basedOnId: string; savedByPersonId: string; savedAtMs: number },
): Promise<boolean> {
  const { read, ...saved } = facts;
  const row = { bookId: book.id, version: read + 1, name: book.name, ...saved };
  const document = JSON.stringify({ isArchived, book } satisfies OwnBookDocument);
  const written = await tx
    .insert(ruleBookVersion)
    .values({ ...row, document })
    .onConflictDoNothing()
    .returning({ version: ruleBookVersion.version });
  return written.length === 1;
}

/** Writes down that somebody looked a sample up and says it is current. */
export async function confirmBook(
  tx: Db,
  confirmation: { bookId: string; confirmedByPersonId: string; confirmedAtMs: number },
): Promise<void> {
  await tx.insert(ruleBookConfirmation).values(confirmation);
}

/** How many athletes go by each book as their own and how many live teams play by it; books nobody uses are left out. */
export async function bookUse(db: Db): Promise<Map<string, { athletes: number; teams: number }>> {
  const own = await db
    .select({ id: athlete.ruleBookId, used: count() })
    .from(athlete)
    .where(isNull(athlete.leftOn))
    .groupBy(athlete.ruleBookId);
  const teams = await db
    .select({ id: athleteTeam.ruleBookId, used: count() })
    .from(athleteTeam)
    .where(isNull(athleteTeam.endedAtMs))
    .groupBy(athleteTeam.ruleBookId);
  const use = new Map(own.map(({ id, used }) => [id, { athletes: used, teams: 0 }]));
  for (const { id, used } of teams) use.set(id, { athletes: use.get(id)?.athletes ?? 0, teams: used });
  return use;
}

type VersionRow = typeof ruleBookVersion.$inferSelect;

async function versionRows(db: Db, bookIds?: readonly string[]): Promise<VersionRow[]> {
  return db
    .select()
    .from(ruleBookVersion)
    .where(bookIds ? inArray(ruleBookVersion.bookId, [...bookIds]) : undefined)
    .orderBy(asc(ruleBookVersion.bookId), asc(ruleBookVersion.version));
}

const documentOf = (row: VersionRow) => JSON.parse(row.document) as OwnBookDocument;

async function named(db: Db, rows: readonly VersionRow[]): Promise<BookVersion[]> {
  const names = await namesOf(
    db,
    rows.map((row) => row.savedByPersonId),
  );
  return rows.map((row) => ({
    ...documentOf(row),
    version: row.version,
    basedOnId: row.basedOnId,
    savedByName: fullName(names.get(row.savedByPersonId) ?? { givenName: "", familyName: "" }),
    savedAtMs: row.savedAtMs,
  }));
}

async function confirmationsOf(db: Db): Promise<Map<string, BookConfirmation>> {
  const rows = await db.select().from(ruleBookConfirmation).orderBy(asc(ruleBookConfirmation.confirmedAtMs));
  const names = await namesOf(
    db,
    rows.map((row) => row.confirmedByPersonId),
  );
  return new Map(
    rows.map((row) => [
      row.bookId,
      {
        byName: fullName(names.get(row.confirmedByPersonId) ?? { givenName: "", familyName: "" }),
        atMs: row.confirmedAtMs,
      },
    ]),
  );
}
