"use client";
import Link from "next/link";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { ACTS_COLUMN, Table } from "@/components/ui/table";
import type { AgainView } from "@/server/api/measurements/shapes";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { dayInWords } from "@/server/domain/time/words";
import { AskAgainDialog } from "./ask-again-dialog";
import { ErrorTable } from "./error-table";
import styles from "./remeasure.module.css";
import { askedOfInWords, onFrame } from "./remeasure-words";
import { WithdrawDialog } from "./withdraw-dialog";

type Latest = AgainView["latest"][number];
type Request = AgainView["waiting"][number];

/** What waits to be measured a second time, how sure each measure is, and what could be asked for. */
export function RemeasureList({ isCoach, waiting, latest, coaches, measureErrors }: AgainView) {
  const [asked, setAsked] = useState<Latest | null>(null);
  return (
    <>
      <PageHeading
        question="How sure are our measures?"
        place={<Link href="/reviews">Reviews</Link>}
        detail="The error beside a measure comes from your own repeats. Measure a frame a second time without seeing what was placed before, and the figure grows surer."
      />
      <Waiting waiting={waiting} isCoach={isCoach} />
      <ErrorTable errors={measureErrors} />
      <LatestMeasures latest={latest} {...(isCoach ? { onAsk: setAsked } : {})} />
      {asked ? <AskAgainDialog measure={asked} coaches={coaches} onClose={() => setAsked(null)} /> : null}
    </>
  );
}

function Waiting({ waiting, isCoach }: Pick<AgainView, "waiting" | "isCoach">) {
  const [withdrawing, setWithdrawing] = useState<Request | null>(null);
  if (waiting.length === 0) {
    return (
      <EmptyState title="Nothing waits for a second measure">
        Ask for one below: of yourself, of another coach, or of whoever comes first.
      </EmptyState>
    );
  }
  return (
    <Section title="To measure again" count={waiting.length}>
      <Table
        caption="Frames that wait for a second measure, the oldest first"
        isCaptionHidden
        rows={waiting}
        rowKey={(row) => row.requestId}
        columns={[
          { key: "kind", heading: "Measure", isRowHeading: true, cell: (row) => MEASURES[row.kind].words },
          { key: "athlete", heading: "Athlete", cell: (row) => row.athleteName },
          { key: "where", heading: "Where", cell: onFrame },
          { key: "whose", heading: "Asked of", cell: (row) => askedOfInWords(row) },
          {
            ...ACTS_COLUMN,
            cell: (row) => (
              <div className={styles.rowActs}>
                {isCoach && (row.isForMe || row.askedOf === null) ? (
                  <LinkButton
                    isSmall
                    href={`/reviews/measure-again/${row.requestId}`}
                    aria-label={`Measure again: ${MEASURES[row.kind].words}, ${row.athleteName}`}
                  >
                    Measure again
                  </LinkButton>
                ) : null}
                {row.mayWithdraw ? (
                  <Button
                    isSmall
                    variant="link"
                    onPress={() => setWithdrawing(row)}
                    aria-label={`Withdraw the request: ${MEASURES[row.kind].words}, ${row.athleteName}`}
                  >
                    Withdraw
                  </Button>
                ) : null}
              </div>
            ),
          },
        ]}
      />
      {withdrawing ? <WithdrawDialog request={withdrawing} onClose={() => setWithdrawing(null)} /> : null}
    </Section>
  );
}

function LatestMeasures({ latest, onAsk }: { latest: AgainView["latest"]; onAsk?: (row: Latest) => void }) {
  return (
    <Section title="The latest measures" count={latest.length}>
      <Table
        caption="Measures of sent reviews whose film is kept, the latest first; what they were worth is left out"
        isCaptionHidden
        rows={latest}
        rowKey={(row) => row.id}
        empty="Nothing is measured on a film that is still kept."
        columns={[
          { key: "kind", heading: "Measure", isRowHeading: true, cell: (row) => MEASURES[row.kind].words },
          { key: "athlete", heading: "Athlete", cell: (row) => row.athleteName },
          { key: "where", heading: "Where", cell: onFrame },
          {
            key: "day",
            heading: "Measured",
            cell: (row) => `${dayInWords(row.measuredOn)}, ${row.coachName}`,
          },
          { key: "again", heading: "Again", align: "number", cell: (row) => row.timesAgain },
          {
            ...ACTS_COLUMN,
            cell: (row) =>
              onAsk ? (
                <Button
                  isSmall
                  variant="link"
                  onPress={() => onAsk(row)}
                  aria-label={`Ask for a second measure: ${MEASURES[row.kind].words}, ${row.athleteName}`}
                >
                  {row.isAsked ? "Ask once more" : "Ask for a second"}
                </Button>
              ) : null,
          },
        ]}
      />
    </Section>
  );
}
