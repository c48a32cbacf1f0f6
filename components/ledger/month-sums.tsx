import { Notice } from "@/components/ui/notice";
import { Section } from "@/components/ui/section";
import type { Answers } from "@/components/wire/answers";
import { formatMoney } from "@/server/domain/money/money";
import styles from "./ledger.module.css";

type Books = Answers["ledger"]["month"];

/** The same month added up three ways that do not look at each other, and whether they agree. */
export function MonthSums({ books }: { books: Books }) {
  const { byRates, fromRows, fromCharges, currency, agree } = books;
  const sums = [
    { name: "From sessions and reviews, at the rate of each day", sum: byRates },
    { name: "From the rows of the file", sum: fromRows },
    { name: "From the charges", sum: fromCharges },
  ];
  return (
    <Section title="Three sums">
      <dl className={styles.sums}>
        {sums.map(({ name, sum }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{inWords(sum, currency)}</dd>
          </div>
        ))}
      </dl>
      {agree ? (
        <p className={styles.agree}>
          <svg viewBox="0 0 20 20" aria-hidden="true">
            <path d="M3 10.5l4.5 4.5L17 5" />
          </svg>
          They agree, to the cent.
        </p>
      ) : (
        <Notice kind="attention" title="They do not agree." isStatic>
          What keeps them apart is among the things to mend.
        </Notice>
      )}
    </Section>
  );
}

function inWords(sum: Books["byRates"], currency: string): string {
  if (sum.length === 0) return formatMoney(0, currency);
  return sum.map((one) => formatMoney(one.amountCents, one.currency)).join(" + ");
}
