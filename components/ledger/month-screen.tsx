import Link from "next/link";
import { buttonClasses } from "@/components/ui/button-look";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { monthInWords } from "@/server/domain/time/words";
import styles from "./ledger.module.css";
import { MonthRows } from "./month-rows";
import { MonthSums } from "./month-sums";
import { MonthTotals } from "./month-totals";

/** A month's books: whether they add up, what is to mend, every row, and the totals. */
export function MonthScreen({ books }: { books: Answers["ledger"]["month"] }) {
  const { month, thisMonth, before, after, counts, toMend } = books;
  return (
    <>
      <PageHeading
        place={monthInWords(month)}
        question="Does the month add up?"
        detail={`${counts.sessions} sessions held, ${counts.reviews} reviews sent, ${counts.charges} charges.`}
        actions={
          <a
            className={buttonClasses({ variant: "primary" })}
            href={`/api/exports/month?month=${month}`}
            download
          >
            Export {monthInWords(month)}
          </a>
        }
      />
      <nav aria-label="Months" className={styles.months} data-print="no">
        {before ? (
          <LinkButton isSmall href={`/ledger?month=${before}`}>
            {monthInWords(before)}
          </LinkButton>
        ) : null}
        {month === thisMonth ? null : (
          <LinkButton isSmall href="/ledger">
            This month
          </LinkButton>
        )}
        {after && after !== thisMonth ? (
          <LinkButton isSmall href={`/ledger?month=${after}`}>
            {monthInWords(after)}
          </LinkButton>
        ) : null}
      </nav>
      <MonthSums books={books} />
      <Section title="To mend" count={toMend.length}>
        {toMend.length === 0 ? (
          <p>Nothing: everything that is over is logged and priced.</p>
        ) : (
          <ul className={styles.mends}>
            {toMend.map((one) => (
              <li key={one.words}>
                <span>{one.words}</span>
                {one.href ? <Link href={one.href}>{one.act}</Link> : null}
              </li>
            ))}
          </ul>
        )}
      </Section>
      <MonthTotals books={books} />
      <MonthRows rows={books.rows} />
    </>
  );
}
