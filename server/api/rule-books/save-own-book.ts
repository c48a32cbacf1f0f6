import { saveBookVersion } from "@/server/data/rule-books";
import { Refusal } from "@/server/domain/errors/refusal";
import type { OwnBookDocument } from "@/server/domain/rule-books/own-book";
import type { Scope } from "../context";
import { keptBook } from "./book-answer";

/** Saves what becomes of a book of the academy's own as its next version, over the one it was read at. */
export async function saveOwnBook(
  { db, actor, nowMs }: Scope,
  { bookId, read }: { bookId: string; read: number },
  change: (before: OwnBookDocument) => OwnBookDocument,
): Promise<void> {
  const { saved, book, isArchived } = await keptBook(db, bookId);
  if (!saved) {
    throw new Refusal({
      reason: "rule_book_invalid",
      why: "A book that ships stays as it is: copy it, and change the copy.",
    });
  }
  const facts = { read, basedOnId: saved.basedOnId, savedByPersonId: actor.personId, savedAtMs: nowMs };
  const isSaved = saved.version === read && (await saveBookVersion(db, change({ book, isArchived }), facts));
  if (!isSaved) throw new Refusal({ reason: "changed_meanwhile" });
}
