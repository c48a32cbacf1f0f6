import { STANDING_WORDS } from "@/server/domain/rule-books/rule-in-words";
import type { BookAnswer } from "./arm-answer";
import { ThrowingCautions } from "./throwing-cautions";
import styles from "./throwing-page.module.css";

/** The books an arm goes by, each with its source, its advice for the age and where its sources differ; the cautions. */
export function BooksInForce({ books }: { books: readonly BookAnswer[] }) {
  return (
    <>
      {books.length > 1 ? (
        <p>All of them weigh every throw of the arm, and on each day the stricter answer counts.</p>
      ) : null}
      {books.map((book) => (
        <div key={book.name} className={styles.book}>
          <p>
            <b>{book.name}</b>
            {book.sampleYear === null ? "" : `, figures of ${book.sampleYear}`} (
            {STANDING_WORDS[book.standing]}). {book.source}.
          </p>
          {book.advice.length + book.notes.length > 0 ? (
            <details className={styles.more}>
              <summary>What it also advises at {book.ageYears}, and where its sources differ</summary>
              <ul className={styles.advice}>
                {[...book.advice, ...book.notes].map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </details>
          ) : null}
        </div>
      ))}
      <ThrowingCautions />
    </>
  );
}

/** By which books the number is, in words. */
export function booksInWords(books: readonly BookAnswer[]): string {
  const names = books.map((book) => book.name);
  const last = names.at(-1) ?? "";
  if (names.length < 2) return `By ${last}.`;
  return `By ${names.slice(0, -1).join(", ")} and ${last}; the stricter counts.`;
}
