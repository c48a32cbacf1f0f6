import type { RuleBook } from "../throwing/rule-book";

/** What one version of an academy's own book keeps: the whole book, and whether it is put aside. */
export interface OwnBookDocument {
  isArchived: boolean;
  book: RuleBook;
}

/**
 * A copy of a book as the academy's own. The year of a sample stays with it, so that a copied sample has to be
 * confirmed like the sample itself.
 * @example ownCopy(book, { id: "rbk_1", name: "Our book" }).standing // "own"
 */
export function ownCopy(book: RuleBook, { id, name }: { id: string; name: string }): RuleBook {
  return { ...book, id, name, standing: "own" };
}

/** A changed book as the next version of one of the academy's own: whose it is, and its sample's year, stay. */
export function nextVersion(before: RuleBook, changed: RuleBook): RuleBook {
  return { ...changed, id: before.id, standing: "own", sampleYear: before.sampleYear };
}
