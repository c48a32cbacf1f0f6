"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { FormActions } from "@/components/ui/form";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { Table } from "@/components/ui/table";
import { TimeText } from "@/components/ui/time-text";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { ConsentKind } from "@/server/domain/people/consent";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords, timeInWords } from "@/server/domain/time/words";
import type { ConsentScreenProps } from "./consent-state";
import { GuardiansView } from "./guardians-view";
import styles from "./plain-list.module.css";

/** What consent to video means, whether it is given, who gave it, and who else can see. */
export function ConsentScreen({ athleteId, state }: ConsentScreenProps) {
  const [isAsking, setIsAsking] = useState(false);
  const decide = useCommand((api, input: { athleteId: string; kind: ConsentKind }, once) =>
    api.consent.decide.mutate(input, once),
  );
  async function withdraw() {
    await decide.run({ athleteId, kind: "withdrawn" });
    setIsAsking(false);
  }
  return (
    <>
      <PageHeading
        question={`May ${state.givenName} be filmed for reviews?`}
        detail={`Clips are deleted ${state.retentionDays} days after they came.`}
      />
      <CommandProblem problem={decide.problem} />
      <Standing state={state} />
      <Section title="What consent to video means">
        <ul className={styles.list}>
          {state.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        {state.mayDecide ? (
          <FormActions>
            {state.isLive ? (
              <Button onPress={() => setIsAsking(true)}>Withdraw consent</Button>
            ) : (
              <Button
                variant="primary"
                isPending={decide.pending}
                onPress={() => void decide.run({ athleteId, kind: "given" })}
              >
                Give consent
              </Button>
            )}
          </FormActions>
        ) : null}
      </Section>
      <GuardiansView athleteId={athleteId} state={state} />
      <History state={state} />
      <ConfirmDialog
        title={`Withdraw consent to video of ${state.givenName}?`}
        confirmText="Withdraw consent"
        isOpen={isAsking}
        isPending={decide.pending}
        onConfirm={() => void withdraw()}
        onCancel={() => setIsAsking(false)}
      >
        From now on no clip can be sent or opened, not by the coach either. What was written stays. You can
        give consent again.
      </ConfirmDialog>
    </>
  );
}

function Standing({ state }: { state: ConsentScreenProps["state"] }) {
  if (state.isLive) {
    return <Notice isStatic kind="held" word="Given" title="Clips can be sent and opened." />;
  }
  const wait = state.isOfAge ? "" : " A guardian decides.";
  return (
    <Notice isStatic kind="attention" word="Not given" title="No clip can be sent or opened.">
      {state.mayDecide ? "Read what it means, then decide." : `Nothing can be sent until it is given.${wait}`}
    </Notice>
  );
}

function History({ state }: { state: ConsentScreenProps["state"] }) {
  const { zone } = state;
  return (
    <Section title="What was decided">
      <Table
        caption="Decisions on video, latest first"
        isCaptionHidden
        rows={state.history}
        rowKey={(row) => row.id}
        empty="Nothing was decided yet."
        columns={[
          {
            key: "what",
            heading: "Decision",
            isRowHeading: true,
            cell: (row) => `Consent ${row.kind}${row.isThisText ? "" : ", for an earlier text"}`,
          },
          { key: "who", heading: "By", cell: (row) => row.byName },
          {
            key: "when",
            heading: "When",
            cell: (row) => (
              <TimeText dateTime={row.atMs}>
                {dayInWords(dayOf(row.atMs, zone), { withYear: true })}, {timeInWords(row.atMs, zone)}
              </TimeText>
            ),
          },
        ]}
      />
    </Section>
  );
}
