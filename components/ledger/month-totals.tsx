import { Section } from "@/components/ui/section";
import { Table } from "@/components/ui/table";
import type { Answers } from "@/components/wire/answers";
import { formatMoney, sumCents } from "@/server/domain/money/money";
import styles from "./ledger.module.css";

type Books = Answers["ledger"]["month"];
type Total = Books["byKind"][number];

/** What the month comes to by kind of work and by coach. */
export function MonthTotals({ books }: { books: Books }) {
  return (
    <div className={styles.totals}>
      <Section title="By kind">
        <Totals caption="Totals by kind" totals={books.byKind} />
      </Section>
      <Section title="By coach">
        <Totals caption="Totals by coach" totals={books.byCoach} />
      </Section>
    </div>
  );
}

/** The sum of the totals, where all are in one currency. */
function sumOf(totals: readonly Total[]): string | undefined {
  const [first] = totals;
  if (!first || totals.some((total) => total.currency !== first.currency)) return undefined;
  return formatMoney(sumCents(totals.map((total) => total.amountCents)), first.currency);
}

function Totals({ caption, totals }: { caption: string; totals: readonly Total[] }) {
  return (
    <Table
      caption={caption}
      isCaptionHidden
      onPhone="scroll"
      rows={totals}
      rowKey={(total) => `${total.name} ${total.currency}`}
      empty="Nothing yet."
      columns={[
        { key: "name", heading: "Name", isRowHeading: true, cell: (total) => total.name },
        {
          key: "rows",
          heading: "Rows",
          align: "number",
          cell: (total) => total.rowCount,
          total: totals.reduce((sum, total) => sum + total.rowCount, 0),
        },
        {
          key: "pitches",
          heading: "Pitches",
          align: "number",
          cell: (total) => total.pitches,
          total: totals.reduce((sum, total) => sum + total.pitches, 0),
        },
        {
          key: "amount",
          heading: "Amount",
          align: "number",
          cell: (total) => formatMoney(total.amountCents, total.currency),
          total: sumOf(totals),
        },
      ]}
    />
  );
}
