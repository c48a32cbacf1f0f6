import Link from "next/link";
import { type Column, Table } from "@/components/ui/table";
import { ROUND_STATE_WORDS } from "@/server/domain/reviews/round-in-words";
import { dayInWords } from "@/server/domain/time/words";
import type { SeasonAnswer, SeasonLinks } from "./season-answer";

type Row = SeasonAnswer["rounds"][number];

/** The rounds of the season, latest first. */
export function RoundList({ rounds, links }: { rounds: SeasonAnswer["rounds"]; links: SeasonLinks }) {
  const columns: Column<Row>[] = [
    {
      key: "received",
      heading: "Clip received",
      isRowHeading: true,
      cell: (row) => <Link href={links.round(row.id)}>{dayInWords(row.receivedOn, { withYear: true })}</Link>,
    },
    { key: "state", heading: "Stands", cell: (row) => ROUND_STATE_WORDS[row.state] },
    { key: "ended", heading: "Ended", cell: (row) => (row.endedOn ? dayInWords(row.endedOn) : "") },
  ];
  return (
    <Table
      caption="Rounds"
      isCaptionHidden
      columns={columns}
      rows={rounds.toReversed()}
      rowKey={(row) => row.id}
      onPhone="scroll"
      empty="No clip came in during these twelve months."
    />
  );
}
