"use client";
import { useState } from "react";
import { AcademyPage } from "@/components/academy/academy-page";
import { AcademyPlace } from "@/components/academy/academy-place";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { Section } from "@/components/ui/section";
import { Table } from "@/components/ui/table";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { SetView } from "@/server/api/agreement/shapes";
import { dayOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./agreement.module.css";
import { namesInWords, standingInWords, WAY_WORDS } from "./agreement-words";
import { KindResults } from "./kind-results";

/** One blind set: who is how far while it is open, how far the coaches agree once it is closed. */
export function SetScreen({ set, zone }: { set: SetView; zone: string }) {
  const day = (ms: number) => dayInWords(dayOf(ms, zone), { withYear: true });
  const ended = set.closedAtMs === null ? "" : `, closed on ${day(set.closedAtMs)}`;
  return (
    <AcademyPage>
      <PageHeading
        question={set.results ? "Where do we differ?" : "How far is everybody?"}
        place={
          <>
            <AcademyPlace href="/academy/agreement" label="Coach agreement" />
            {` / ${set.name}`}
          </>
        }
        detail={`${WAY_WORDS[set.way]}: ${namesInWords(set.checkpoints.map(({ name }) => name))}. ${set.items} frames, drawn on ${day(set.madeAtMs)} by ${set.madeByName}${ended}.`}
        actions={set.results ? null : <OpenActs set={set} />}
      />
      {set.results ? <Results set={set} results={set.results} /> : <Progress set={set} />}
    </AcademyPage>
  );
}

function OpenActs({ set }: { set: SetView }) {
  const [isClosing, setClosing] = useState(false);
  return (
    <>
      {set.isCoach ? (
        <LinkButton variant="primary" href={`/reviews/blind/${set.id}`}>
          Rate the frames
        </LinkButton>
      ) : null}
      {set.isAdmin ? <Button onPress={() => setClosing(true)}>Close the set</Button> : null}
      {isClosing ? <CloseDialog set={set} onClose={() => setClosing(false)} /> : null}
    </>
  );
}

function CloseDialog({ set, onClose }: { set: SetView; onClose: () => void }) {
  const close = useCommand((api, input: { setId: string }, once) => api.agreement.close.mutate(input, once));
  const through = set.progress.filter(({ rated }) => rated >= set.items).length;
  async function confirm() {
    if (await close.run({ setId: set.id })) onClose();
  }
  return (
    <ConfirmDialog
      title="Close this set?"
      confirmText="Close the set"
      isOpen
      isPending={close.pending}
      onConfirm={() => void confirm()}
      onCancel={onClose}
    >
      <CommandProblem problem={close.problem} />
      {through === 1 ? "1 coach is" : `${through} coaches are`} through with all {set.items} frames. From then
      on nobody rates any more, and every coach and admin sees what each said. It cannot be opened again.
    </ConfirmDialog>
  );
}

function Progress({ set: { progress, items } }: { set: SetView }) {
  return (
    <Section title="Coaches" count={progress.length}>
      <p className={styles.method}>
        What anybody said stays hidden, from admins too, until the set is closed.
      </p>
      <Table
        caption="How many frames each coach has rated"
        isCaptionHidden
        rows={progress}
        rowKey={(row) => row.personId}
        empty="Nobody coaches here yet."
        columns={[
          { key: "name", heading: "Coach", isRowHeading: true, cell: (row) => row.name },
          {
            key: "rated",
            heading: "Rated",
            align: "number",
            cell: (row) => `${row.rated} of ${items}`,
          },
          { key: "standing", heading: "Stands", cell: (row) => standingInWords(row.rated, items) },
        ]}
      />
    </Section>
  );
}

function Results({ set, results }: { set: SetView; results: NonNullable<SetView["results"]> }) {
  const nameOf = (personId: string) => set.progress.find((each) => each.personId === personId)?.name ?? "";
  const checkpointName = (id: string) => set.checkpoints.find((each) => each.id === id)?.name ?? "";
  const { kinds, uncounted } = results;
  return (
    <>
      {kinds.map((each) => (
        <KindResults key={each.kind} results={each} nameOf={nameOf} checkpointName={checkpointName} />
      ))}
      {uncounted.length > 0 ? (
        <Section title="Left out of the figures">
          <p className={styles.method}>
            {uncounted
              .map(({ coachId, rated }) => `${nameOf(coachId)} rated ${rated} of ${set.items}`)
              .join("; ")}
            : fewer than half, or fewer than five, is too little to compare.
          </p>
        </Section>
      ) : null}
    </>
  );
}
