import type { ReactNode } from "react";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { ThrowingAnswer } from "./arm-answer";
import { ArmToday } from "./arm-today";
import { BooksInForce, booksInWords } from "./books-in-force";
import { Load } from "./load";
import { LogThrows } from "./log-throws";
import { Outings } from "./outings";
import { PainBanner } from "./pain-banner";
import { PainRecord } from "./pain-record";
import { ReportPain } from "./report-pain";
import { SaidBefore } from "./said-before";
import { Teams } from "./teams";
import { ThrowList } from "./throw-list";
import styles from "./throwing-page.module.css";
import { YearOfThrows } from "./year-of-throws";

/** How many rows of the log are in sight before the rest is unfolded. */
const ROWS_SHOWN = 10;

/** One arm's throwing: log first, then the book's answer, outings, the log, pain and the year. */
export function ThrowingPage({
  view,
  place,
  overrides,
}: {
  view: ThrowingAnswer;
  place?: ReactNode;
  /** Where limits were overridden, and for an admin the way to do so. */
  overrides?: ReactNode;
}) {
  const { athlete, arm, books, pain, log, outings, today, weeks, reading, load, teams } = view;
  return (
    <>
      <PageHeading
        {...(place ? { place } : {})}
        question={`What did ${athlete.givenName} throw?`}
        actions={<ReportPain athleteId={athlete.athleteId} givenName={athlete.givenName} today={today} />}
      />
      <PainBanner athlete={athlete} pain={pain} today={today} />
      <div className={styles.halves}>
        <Section title="Log throws" id="log">
          <LogThrows athlete={athlete} today={today} usualKind={log[0]?.kind ?? "game"} teams={teams.teams} />
        </Section>
        <Section title="Throwing today">
          <ArmToday arm={arm} />
          <p className={styles.quiet}>
            {booksInWords(books)} {reading}
          </p>
        </Section>
      </div>
      {overrides}
      <Section title="Outings ahead" {...countOf(outings)}>
        <Outings athleteId={athlete.athleteId} today={today} outings={outings} teams={teams.teams} />
      </Section>
      <Section title="Teams" {...countOf(teams.teams.filter((team) => !team.hasEnded))}>
        <Teams athleteId={athlete.athleteId} teams={teams} />
      </Section>
      <Section title="The log" aside="Twelve months">
        <ThrowList rows={log.slice(0, ROWS_SHOWN)} teams={teams.teams} today={today} />
        {log.length > ROWS_SHOWN ? (
          <details className={styles.more}>
            <summary>{log.length - ROWS_SHOWN} earlier entries</summary>
            <ThrowList rows={log.slice(ROWS_SHOWN)} teams={teams.teams} today={today} />
          </details>
        ) : null}
        <SaidBefore athleteId={athlete.athleteId} today={today} />
      </Section>
      <Section title="The year">
        <YearOfThrows weeks={weeks} />
      </Section>
      <Section title="Load">
        <Load load={load} />
      </Section>
      <Section title="Pain" {...countOf(pain.reports)}>
        <PainRecord pain={pain} />
      </Section>
      <Section title={books.length > 1 ? "The books" : "The book"}>
        <BooksInForce books={books} />
      </Section>
    </>
  );
}

/** A count beside a title, where there is anything to count. */
function countOf(rows: readonly unknown[]) {
  return rows.length > 0 ? { count: rows.length } : {};
}
