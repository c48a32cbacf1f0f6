import Link from "next/link";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";
import { bookStateInWords, bookUseInWords } from "./book-words";
import styles from "./books.module.css";
import { ReadingPart } from "./reading-part";

type Book = Answers["ruleBooks"]["list"]["books"][number];

/** What a {@link BooksScreen} takes. */
export interface BooksScreenProps {
  list: Answers["ruleBooks"]["list"];
  /** IANA zone in which days are told. */
  zone: string;
  isAdmin: boolean;
}

const GROUPS: readonly { title: string; words: string; holds: (book: Book) => boolean }[] = [
  {
    title: "Our own",
    words: "Copies of this academy. Each change is a version of its own.",
    holds: (book) => book.standing === "own" && !book.isArchived,
  },
  {
    title: "Published",
    words: "Guidelines and league rules as published, dated.",
    holds: (book) => book.standing === "published",
  },
  {
    title: "Samples",
    words: "State rules of a past year. They cannot be chosen until an admin says that they are current.",
    holds: (book) => book.standing === "sample",
  },
  {
    title: "Opinion",
    words: "Guidance that somebody published, or that was replaced since.",
    holds: (book) => book.standing === "opinion",
  },
  {
    title: "Put aside",
    words: "Cannot be chosen anew. Who goes by one already still does.",
    holds: (book) => book.isArchived,
  },
];

/** Every rule book with its source and where it stands, and which reading of them is on. */
export function BooksScreen({ list, zone, isAdmin }: BooksScreenProps) {
  return (
    <AcademyPage>
      <PageHeading
        question="Which rules do arms go by?"
        place={<AcademyPlace />}
        detail="Each athlete goes by one book, and by the book of each of their teams; on every day the stricter answer holds. The league's own rules, the physician and the athletic trainer come first."
      />
      <ReadingPart key={list.reading.version} reading={list.reading} isAdmin={isAdmin} />
      {GROUPS.map(({ title, words, holds }) => {
        const books = list.books.filter(holds);
        return books.length === 0 ? null : (
          <Section key={title} title={title} count={books.length}>
            <p className={styles.quiet}>{words}</p>
            <ul className={styles.list}>
              {books.map((book) => (
                <BookEntry key={book.id} book={book} zone={zone} />
              ))}
            </ul>
          </Section>
        );
      })}
    </AcademyPage>
  );
}

function BookEntry({ book, zone }: { book: Book; zone: string }) {
  return (
    <li className={styles.entry}>
      <div>
        <Link href={`/academy/books/${book.id}`} className={styles.name}>
          {book.name}
        </Link>
        <div className={styles.quiet}>{book.source}</div>
      </div>
      <div>
        {book.ages === "none" ? null : <div>Ages {book.ages}</div>}
        {bookStateInWords(book, zone).map((words) => (
          <div key={words}>{words}</div>
        ))}
        <div className={styles.quiet}>{bookUseInWords(book.use)}</div>
      </div>
    </li>
  );
}
