import { DefinitionList } from "@/components/ui/definition-list";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { Table } from "@/components/ui/table";
import type { Answers } from "@/components/wire/answers";
import { ageBasisInWords, agesInWords, RULE_KIND_WORDS } from "@/server/domain/rule-books/rule-in-words";
import { capitalised } from "@/server/domain/text/capitalised";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { momentInWords } from "@/server/domain/time/words";
import { AcademyPage } from "./academy-page";
import { AcademyPlace } from "./academy-place";
import { BookActs } from "./book-acts";
import { itemsWithPaths } from "./book-draft";
import { RuleReading } from "./book-reading";
import { bookStateInWords, bookUseInWords, standingInWords } from "./book-words";
import styles from "./books.module.css";

type Answer = Answers["ruleBooks"]["book"];

/** What a {@link BookScreen} takes. */
export interface BookScreenProps {
  answer: Answer;
  /** IANA zone in which days and times are told. */
  zone: string;
  isAdmin: boolean;
}

/** One rule book to be read: its source, its ages and tables, what it advises, where its sources differ, its versions. */
export function BookScreen({ answer, zone, isAdmin }: BookScreenProps) {
  const { book, state, versions } = answer;
  return (
    <AcademyPage>
      <PageHeading
        question={`What does “${book.name}” say?`}
        place={<AcademyPlace href="/academy/books" label="Rule books" />}
        detail={`${capitalised(standingInWords(state))}, ${coverInWords(state.ages)}`}
        actions={isAdmin ? <BookActs state={state} /> : null}
      />
      {state.notOffered === "not_confirmed" ? (
        <Notice isStatic kind="attention" className={styles.notice} title={`Figures of ${book.sampleYear}`}>
          It cannot be chosen until an admin has looked it up and says that it is current.
        </Notice>
      ) : null}
      <DefinitionList
        items={[
          { term: "Source", detail: book.source },
          { term: "Age", detail: ageBasisInWords(book.ageBasis) },
          { term: "Where it stands", detail: bookStateInWords(state, zone).join(". ") || "Offered" },
          { term: "In use", detail: bookUseInWords(state.use) },
        ]}
      />
      {itemsWithPaths(book.rules, []).map(({ item, path }) => (
        <Section key={path.join()} title={RULE_KIND_WORDS[item.kind]}>
          <RuleReading rule={item} />
        </Section>
      ))}
      <Advice lines={book.advice} />
      {book.notes.length > 0 ? (
        <Section title="Where its sources differ">
          <ul className={styles.lines}>
            {book.notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </Section>
      ) : null}
      {versions.length > 0 ? <Versions versions={versions} zone={zone} /> : null}
    </AcademyPage>
  );
}

function Advice({ lines }: { lines: RuleBook["advice"] }) {
  if (lines.length === 0) return null;
  return (
    <Section title="What it also advises" count={lines.length}>
      <p className={styles.quiet}>Shown beside the number, never part of it.</p>
      <Table
        caption="Advice by age"
        isCaptionHidden
        rows={lines}
        rowKey={(line) => `${line.ageMin} ${line.words}`}
        columns={[
          {
            key: "ages",
            heading: "Ages",
            isRowHeading: true,
            isFit: true,
            cell: (line) => agesInWords(line.ageMin, line.ageMax),
          },
          { key: "words", heading: "Advice", cell: (line) => line.words },
          { key: "source", heading: "Source", cell: (line) => <small>{line.source}</small> },
        ]}
      />
    </Section>
  );
}

function Versions({ versions, zone }: { versions: Answer["versions"]; zone: string }) {
  return (
    <Section title="Versions" count={versions.length}>
      <p className={styles.quiet}>Each is kept: what was said on a day goes by the version of that day.</p>
      <Table
        caption="Versions, latest first"
        isCaptionHidden
        rows={versions}
        rowKey={(each) => String(each.version)}
        columns={[
          {
            key: "version",
            heading: "Version",
            isRowHeading: true,
            isFit: true,
            cell: (each) => each.version,
          },
          { key: "name", heading: "Name", cell: (each) => each.name },
          { key: "by", heading: "Saved by", cell: (each) => each.byName },
          { key: "at", heading: "When", cell: (each) => momentInWords(each.atMs, zone, { withYear: true }) },
          { key: "state", heading: "State", cell: (each) => (each.isArchived ? "put aside" : "offered") },
        ]}
      />
    </Section>
  );
}

const coverInWords = (ages: string) =>
  ages === "none" ? "no limit for a day." : `ages ${ages}. Outside them: no published limit.`;
