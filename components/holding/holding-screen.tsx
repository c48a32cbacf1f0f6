import Link from "next/link";
import { HeldChart } from "@/components/charts/held-chart";
import { EmptyState } from "@/components/ui/empty-state";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import type { HoldingLedgerView } from "@/server/api/evidence/holding-shape";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { DESCRIBES_ONLY } from "@/server/domain/mechanics/drill-holding";
import { FEWEST_CORRECTIONS } from "@/server/domain/mechanics/holding-times";
import styles from "./holding.module.css";
import { type HoldingPlace, holdingHref } from "./holding-address";
import { HoldingFilters } from "./holding-filters";
import { DrillTable, GroupTable, StepTable } from "./holding-tables";
import { curveInWords, ledgerInWords } from "./holding-words";

/** What a {@link HoldingScreen} takes. */
export interface HoldingScreenProps {
  ledger: HoldingLedgerView;
  place: HoldingPlace;
}

/** How long do corrections take to hold? Those that are chosen, together, by checkpoint, by coach and beside drills. */
export function HoldingScreen({ ledger, place }: HoldingScreenProps) {
  return (
    <>
      <PageHeading
        question="How long do corrections take to hold?"
        place={
          <>
            <Link href="/academy">Academy</Link>
            {" / Holding"}
          </>
        }
        detail="From the day it was given to the day it first held. The open and the retired ones count for as long as they were watched; leaving them out would make every correction look quicker than it is."
      />
      {ledger.onRecord === 0 ? (
        <EmptyState title="No correction was given yet">
          Give one in the review room; from the day it is sent it is counted here.
        </EmptyState>
      ) : (
        <>
          <HoldingFilters choices={ledger.choices} place={place} />
          <Chosen ledger={ledger} place={place} />
        </>
      )}
    </>
  );
}

function Chosen({ ledger, place }: HoldingScreenProps) {
  if (ledger.all.watched === 0) {
    return (
      <EmptyState
        title="No correction is of this choice"
        action={<Link href="/academy/holding">See every correction</Link>}
      >
        {ledger.onRecord} on record in all. Choose fewer things at a time.
      </EmptyState>
    );
  }
  return (
    <>
      <Section title={chosenInWords(ledger, place)} count={ledger.all.watched}>
        <p className={styles.told}>{ledgerInWords(ledger.all).join(" ")}</p>
        <p className={styles.told}>{curveInWords(ledger)}</p>
        {ledger.steps.length === 0 ? null : (
          <HeldChart
            title="Share that held, by days since given"
            points={ledger.steps}
            longestDays={ledger.longestDays}
            table={<StepTable steps={ledger.steps} />}
          />
        )}
      </Section>
      <Section title="By checkpoint" count={ledger.byCheckpoint.length}>
        <GroupTable
          caption="How long corrections take to hold, by checkpoint"
          heading="Checkpoint"
          groups={ledger.byCheckpoint}
          hrefOf={(checkpointId) => holdingHref({ ...place, checkpointId })}
        />
      </Section>
      <Section title="By coach" count={ledger.byCoach.length}>
        <p className={styles.quiet}>
          Coaches look after unlike athletes and give unlike corrections. This describes, and ranks nobody.
        </p>
        <GroupTable
          caption="How long corrections take to hold, by coach"
          heading="Coach"
          groups={ledger.byCoach}
          hrefOf={(coachId) => holdingHref({ ...place, coachId })}
        />
      </Section>
      <Section title="Beside which drills" count={ledger.drills.length}>
        {ledger.drills.length === 0 ? (
          <p className={styles.quiet}>
            No drill can be set beside the rest yet: that takes {FEWEST_CORRECTIONS} corrections with it and{" "}
            {FEWEST_CORRECTIONS} without it, at one checkpoint.
          </p>
        ) : (
          <>
            <Notice isStatic word="Caution" className={styles.caution}>
              {DESCRIBES_ONLY} Where the two intervals overlap, chance alone may have made the difference.
            </Notice>
            <DrillTable drills={ledger.drills} />
          </>
        )}
      </Section>
    </>
  );
}

/** What was chosen, as a heading. */
function chosenInWords(
  { choices }: HoldingLedgerView,
  { phase, checkpointId, coachId }: HoldingPlace,
): string {
  const nameOf = (id: string, named: readonly { id: string; name: string }[]) =>
    named.find((each) => each.id === id)?.name ?? id;
  const parts = [
    ...(phase === null ? [] : [PHASE_WORDS[phase]]),
    ...(checkpointId === null ? [] : [nameOf(checkpointId, choices.checkpoints)]),
    ...(coachId === null ? [] : [nameOf(coachId, choices.coaches)]),
  ];
  return parts.length === 0 ? "Every correction" : parts.join(", ");
}
