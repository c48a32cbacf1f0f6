import { z } from "zod";
import type { Db } from "@/db/client";
import { bookUse, findBook, type KeptBook, listBooks } from "@/server/data/rule-books";
import { Refusal } from "@/server/domain/errors/refusal";
import {
  NOT_OFFERED,
  type NotOffered,
  notOfferedInWords,
  whyNotOffered,
} from "@/server/domain/rule-books/book-choice";
import { agesCovered } from "@/server/domain/rule-books/rule-in-words";
import { bookInForceFrom, STANDINGS } from "@/server/domain/throwing/rule-book";

const saying = z.strictObject({ byName: z.string(), atMs: z.number() });

/** A book as it stands in a list: what it is, where from, whether it is offered and who goes by it. */
export const bookAnswer = z.strictObject({
  id: z.string(),
  name: z.string(),
  source: z.string(),
  standing: z.enum(STANDINGS),
  sampleYear: z.number().nullable(),
  ages: z.string(),
  inForceFrom: z.string(),
  /** The version that a change must name; 0 for a book that ships. */
  version: z.number(),
  basedOnName: z.string().nullable(),
  saved: saying.nullable(),
  confirmation: saying.nullable(),
  isArchived: z.boolean(),
  notOffered: z.enum(NOT_OFFERED).nullable(),
  use: z.strictObject({ athletes: z.number(), teams: z.number() }),
});

/** The value of {@link bookAnswer}. */
export type BookAnswer = z.output<typeof bookAnswer>;

/** Every book as it stands. */
export async function bookAnswers(db: Db): Promise<BookAnswer[]> {
  const kept = await listBooks(db);
  const use = await bookUse(db);
  const names = new Map(kept.map(({ book }) => [book.id, book.name]));
  return kept.map(({ book, saved, confirmation, isArchived, ...rest }) => ({
    id: book.id,
    name: book.name,
    source: book.source,
    standing: book.standing,
    sampleYear: book.sampleYear,
    ages: agesCovered(book),
    inForceFrom: bookInForceFrom(book),
    version: saved?.version ?? 0,
    basedOnName: saved ? (names.get(saved.basedOnId) ?? null) : null,
    saved: saved && { byName: saved.savedByName, atMs: saved.savedAtMs },
    confirmation,
    isArchived,
    notOffered: reasonOf({ book, saved, confirmation, isArchived, ...rest }),
    use: use.get(book.id) ?? { athletes: 0, teams: 0 },
  }));
}

/** The book by an id, or a refusal. */
export async function keptBook(db: Db, bookId: string): Promise<KeptBook> {
  const kept = await findBook(db, bookId);
  if (!kept) throw new Refusal({ reason: "not_found" });
  return kept;
}

/** Every book as a choice: those that are not offered stand for what goes by them already. */
export async function bookChoices(db: Db): Promise<{ id: string; name: string; isOffered: boolean }[]> {
  return (await listBooks(db)).map((kept) => ({
    id: kept.book.id,
    name: kept.book.name,
    isOffered: reasonOf(kept) === null,
  }));
}

/** Refuses a book that cannot be chosen anew; one that is chosen already may stay. */
export async function refuseUnoffered(db: Db, bookId: string, chosenBefore: string | null): Promise<void> {
  if (bookId === chosenBefore) return;
  const kept = await findBook(db, bookId);
  const why = kept ? reasonOf(kept) : null;
  if (!kept)
    throw new Refusal({
      reason: "book_not_offered",
      bookName: "This rule book",
      why: "There is none by that name.",
    });
  if (why)
    throw new Refusal({ reason: "book_not_offered", bookName: kept.book.name, why: notOfferedInWords(why) });
}

function reasonOf({ book, isArchived, confirmation }: KeptBook): NotOffered | null {
  return whyNotOffered({ book, isArchived, isConfirmed: confirmation !== null });
}
