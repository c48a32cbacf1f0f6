"use client";

import Link from "next/link";
import { LinkButton } from "@/components/ui/link-button";
import { Menu } from "@/components/ui/menu";
import { Section } from "@/components/ui/section";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import type { AwaitedRow } from "@/server/api/read-queue";
import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { actsOnAwaited, ROUND_ACT_WORDS, type RoundAct } from "./round-acts";

/** What an {@link AwaitedRounds} takes. */
export interface AwaitedRoundsProps {
  rounds: readonly AwaitedRow[];
  onAct: (act: RoundAct, row: AwaitedRow) => void;
}

/** The rounds in which it is the family's turn: nothing is owed, until a clip comes or the time for it is over. */
export function AwaitedRounds({ rounds, onAct }: AwaitedRoundsProps) {
  if (rounds.length === 0) return null;
  return (
    <Section title="The family’s turn" count={rounds.length}>
      <Table
        caption="Rounds that wait for a clip"
        isCaptionHidden
        rows={rounds}
        rowKey={(row) => row.roundId}
        columns={[
          {
            key: "athlete",
            heading: "Athlete",
            isRowHeading: true,
            cell: (row) => <Link href={`/athletes/${row.athleteId}`}>{row.athleteName}</Link>,
          },
          {
            key: "what",
            heading: "Waits for",
            cell: (row) => (row.state === "retake" ? "A new clip in place of one" : "A reply"),
          },
          { key: "coach", heading: "Coach", cell: (row) => row.coachName ?? "Nobody yet" },
          { key: "from", heading: "Asked for from", cell: (row) => dayOrWait(row.replyFrom) },
          {
            key: "until",
            heading: "Last day",
            cell: (row) => (row.lapsesOn ? dayInWords(addDays(row.lapsesOn, -1)) : "Not set"),
          },
          { ...ACTS_COLUMN, cell: (row) => <Acts row={row} onAct={onAct} /> },
        ]}
      />
    </Section>
  );
}

function dayOrWait(day: CalendarDay | null): string {
  return day ? dayInWords(day) : "Not while pain is on record";
}

function Acts({ row, onAct }: { row: AwaitedRow; onAct: AwaitedRoundsProps["onAct"] }) {
  const entries = [
    { key: "open", label: "Look", href: `/reviews/${row.roundId}` },
    ...actsOnAwaited(row).map((act) => ({
      key: act,
      label: ROUND_ACT_WORDS[act],
      onAction: () => onAct(act, row),
    })),
  ];
  if (entries.length === 1) {
    return (
      <LinkButton isSmall href={`/reviews/${row.roundId}`}>
        Look
      </LinkButton>
    );
  }
  return <Menu label="More" accessibleLabel={`More for ${row.athleteName}`} isSmall entries={entries} />;
}
