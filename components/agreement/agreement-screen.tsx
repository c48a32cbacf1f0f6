"use client";
import Link from "next/link";
import { useState } from "react";
import { AcademyPage } from "@/components/academy/academy-page";
import { AcademyPlace } from "@/components/academy/academy-place";
import { Button } from "@/components/ui/button";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { ACTS_COLUMN, type Column, Table } from "@/components/ui/table";
import type { PoolView, SetsView } from "@/server/api/agreement/shapes";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { progressInWords, WAY_WORDS } from "./agreement-words";
import { DrawDialog } from "./draw-dialog";

type Set = SetsView["sets"][number];

/** What an {@link AgreementScreen} takes. */
export interface AgreementScreenProps extends SetsView {
  /** What a set can be drawn from; null for who may draw none. */
  pool: PoolView | null;
  /** IANA zone by which days are told. */
  zone: string;
}

/** The blind sets of the academy: those that are being rated, and those that tell how far coaches agree. */
export function AgreementScreen({ sets, isCoach, pool, zone }: AgreementScreenProps) {
  const [isDrawing, setDrawing] = useState(false);
  const draw = pool ? <Button onPress={() => setDrawing(true)}>Draw a set</Button> : null;
  const open = sets.filter(({ closedAtMs }) => closedAtMs === null);
  const closed = sets.filter(({ closedAtMs }) => closedAtMs !== null);
  return (
    <AcademyPage>
      <PageHeading
        question="Do our coaches see the same thing?"
        place={<AcademyPlace />}
        detail="A set is a few frames that were reviewed before. Each coach judges or measures them alone; nobody sees what another said until the set is closed."
        actions={sets.length > 0 ? draw : null}
      />
      {sets.length === 0 ? (
        <EmptyState title="No set was drawn yet" action={draw ?? undefined}>
          {pool
            ? "Draw frames of one view and a checkpoint or two. Some ten minutes of each coach tell more than a meeting."
            : "An admin draws the first one. It then stands here to be rated."}
        </EmptyState>
      ) : (
        <>
          <OpenSets sets={open} isCoach={isCoach} zone={zone} />
          <ClosedSets sets={closed} zone={zone} />
        </>
      )}
      {isDrawing && pool ? <DrawDialog pool={pool} onClose={() => setDrawing(false)} /> : null}
    </AcademyPage>
  );
}

const NAME: Column<Set> = {
  key: "name",
  heading: "Set",
  isRowHeading: true,
  cell: ({ id, name }) => <Link href={`/academy/agreement/${id}`}>{name}</Link>,
};
const WHAT: Column<Set> = {
  key: "what",
  heading: "What",
  cell: ({ way, items }) => `${WAY_WORDS[way]}, ${items} frames`,
};
const dayColumn = (heading: string, zone: string, msOf: (set: Set) => number): Column<Set> => ({
  ...{ key: "day", heading },
  cell: (set) => dayInWords(dayOf(msOf(set), zone), { withYear: true }),
});

function OpenSets({ sets, isCoach, zone }: { sets: readonly Set[]; isCoach: boolean; zone: string }) {
  const own: Column<Set>[] = isCoach
    ? [
        { key: "own", heading: "You", cell: ({ rated, items }) => `${rated} of ${items}` },
        { ...ACTS_COLUMN, cell: (set) => <RateLink set={set} /> },
      ]
    : [];
  return (
    <Section title="Open" count={sets.length}>
      <Table
        caption="Sets that are being rated"
        isCaptionHidden
        rows={sets}
        rowKey={({ id }) => id}
        empty="No set is open."
        columns={[
          NAME,
          WHAT,
          dayColumn("Drawn", zone, ({ madeAtMs }) => madeAtMs),
          { key: "far", heading: "How far", cell: progressInWords },
          ...own,
        ]}
      />
    </Section>
  );
}

function RateLink({ set: { id, name, rated, items } }: { set: Set }) {
  if (rated >= items) return <>all rated</>;
  const word = rated === 0 ? "Rate" : "Go on";
  return (
    <LinkButton isSmall href={`/reviews/blind/${id}`} aria-label={`${word}: ${name}`}>
      {word}
    </LinkButton>
  );
}

function ClosedSets({ sets, zone }: { sets: readonly Set[]; zone: string }) {
  return (
    <Section title="Closed" count={sets.length}>
      <Table
        caption="Sets that are closed, the latest first"
        isCaptionHidden
        rows={sets}
        rowKey={({ id }) => id}
        empty="No set is closed yet, so nothing is known of how far coaches agree."
        columns={[
          NAME,
          WHAT,
          dayColumn("Closed", zone, ({ closedAtMs, madeAtMs }) => closedAtMs ?? madeAtMs),
          {
            key: "coaches",
            heading: "Rated by",
            cell: ({ begun }) => (begun === 1 ? "1 coach" : `${begun} coaches`),
          },
        ]}
      />
    </Section>
  );
}
