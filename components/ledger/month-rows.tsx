import Link from "next/link";
import { Section } from "@/components/ui/section";
import { Table } from "@/components/ui/table";
import type { Answers } from "@/components/wire/answers";
import { formatMoney } from "@/server/domain/money/money";
import { dayInWords } from "@/server/domain/time/words";

/** Every row of the month, as the file has it: one for each session and athlete, one for each review. */
export function MonthRows({ rows }: { rows: Answers["ledger"]["month"]["rows"] }) {
  return (
    <Section title="Rows" count={rows.length}>
      <Table
        caption="Every session and athlete, and every review"
        isCaptionHidden
        onPhone="scroll"
        rows={rows}
        rowKey={(row) => row.key}
        empty="No session or review in this month."
        columns={[
          {
            key: "when",
            heading: "When",
            isRowHeading: true,
            cell: (row) => (
              <Link href={row.href}>
                {dayInWords(row.day)} {row.startTime}
              </Link>
            ),
          },
          { key: "kind", heading: "Kind", cell: (row) => row.kindLabel },
          { key: "athlete", heading: "Athlete", cell: (row) => row.athleteName },
          { key: "coach", heading: "Coach", cell: (row) => row.coachName },
          { key: "site", heading: "Site", cell: (row) => row.siteName },
          { key: "state", heading: "State", cell: (row) => row.state },
          { key: "minutes", heading: "Minutes", align: "number", cell: (row) => row.minutes },
          { key: "pitches", heading: "Pitches", align: "number", cell: (row) => row.pitches },
          {
            key: "amount",
            heading: "Amount",
            align: "number",
            cell: (row) => formatMoney(row.amountCents, row.currency),
          },
        ]}
      />
    </Section>
  );
}
