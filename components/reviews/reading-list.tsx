import Link from "next/link";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { type Column, Table } from "@/components/ui/table";
import type { RoundListView } from "@/server/api/reviews/shapes";
import { countInWords } from "@/server/domain/reviews/recap";
import { ROUND_STATE_WORDS } from "@/server/domain/reviews/round-in-words";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";

type Row = RoundListView["rounds"][number];

/** Every round of an athlete, the latest first. */
export function ReadingList({ athleteId, list }: { athleteId: string; list: RoundListView }) {
  const day = (atMs: number) => dayInWords(dayOf(atMs, list.zone), { withYear: true });
  const columns: Column<Row>[] = [
    {
      key: "received",
      heading: "Clip sent",
      isRowHeading: true,
      cell: (row) => <Link href={`/family/${athleteId}/rounds/${row.id}`}>{day(row.receivedAtMs)}</Link>,
    },
    { key: "state", heading: "Stands", cell: (row) => ROUND_STATE_WORDS[row.state] },
    {
      key: "corrections",
      heading: "Corrections",
      cell: (row) =>
        row.sentAtMs === null
          ? "no review yet"
          : `${countInWords(row.givenCount)}${row.openCount > 0 ? `, ${row.openCount} open` : ""}`,
    },
    { key: "coach", heading: "Coach", cell: (row) => row.coachName ?? "none yet" },
  ];
  return (
    <>
      <PageHeading question="What was said of every clip?" />
      {list.rounds.length === 0 ? (
        <EmptyState
          title="No clip has been sent"
          action={<LinkButton href={`/family/${athleteId}/send`}>Send a clip</LinkButton>}
        >
          A clip begins a round: the coach's review says what to work on.
        </EmptyState>
      ) : (
        <Table
          caption="Rounds"
          isCaptionHidden
          columns={columns}
          rows={list.rounds}
          rowKey={(row) => row.id}
        />
      )}
    </>
  );
}
