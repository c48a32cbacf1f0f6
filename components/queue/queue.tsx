"use client";

import Link from "next/link";
import { useRouter } from "next/navigation";
import { useRef, useState } from "react";
import { Button } from "@/components/ui/button";
import { EmptyState } from "@/components/ui/empty-state";
import { LinkButton } from "@/components/ui/link-button";
import { PageHeading } from "@/components/ui/page-heading";
import { showToast } from "@/components/ui/toast";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { AwaitedRow, OwedRow } from "@/server/api/read-queue";
import { AwaitedRounds } from "./awaited-rounds";
import styles from "./queue.module.css";
import { queueAxis } from "./queue-axis";
import { QueueRow } from "./queue-row";
import { QueueTicks } from "./queue-track";
import {
  firstActOf,
  isIn,
  QUEUE_PART_WORDS,
  QUEUE_PARTS,
  type QueuePart,
  type RoundAct,
  type Viewer,
} from "./round-acts";
import { type RoundAsked, RoundDialogs } from "./round-dialogs";
import { useRowKeys } from "./use-row-keys";

/** What a {@link Queue} takes. */
export interface QueueProps {
  owed: readonly OwedRow[];
  awaited: readonly AwaitedRow[];
  coaches: readonly { personId: string; name: string }[];
  viewer: Viewer;
  part: QueuePart;
  nowMs: number;
}

/** What is owed, in the order it falls due, on one axis of time. */
export function Queue({ owed, awaited, coaches, viewer, part, nowMs }: QueueProps) {
  const router = useRouter();
  const list = useRef<HTMLDivElement>(null);
  const onKeyDown = useRowKeys(list);
  const [asked, setAsked] = useState<RoundAsked | null>(null);
  const [takingId, setTakingId] = useState("");
  const take = useCommand((api, input: { roundId: string }, once) => api.rounds.take.mutate(input, once));
  const putBack = useCommand((api, input: { roundId: string }, once) =>
    api.rounds.putBack.mutate(input, once),
  );
  const shown = owed.filter((row) => isIn(part, row, viewer));
  const next = shown.find((row) => firstActOf(row, viewer) !== "look");
  const problem = take.problem ?? putBack.problem;

  async function onTake(roundId: string) {
    setTakingId(roundId);
    if (await take.run({ roundId })) router.push(`/reviews/${roundId}`);
    else router.refresh();
    setTakingId("");
  }
  async function onAct(act: RoundAct, row: OwedRow | AwaitedRow) {
    const { roundId, athleteName, coachPersonId } = row;
    if (act !== "put_back") return setAsked({ act, roundId, athleteName, coachPersonId });
    if (await putBack.run({ roundId })) showToast({ text: `${athleteName}’s round is back in the queue.` });
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys only move the focus among the controls inside
    <div ref={list} onKeyDown={onKeyDown}>
      <PageHeading
        question="What should I do next, and what will be late?"
        detail={summary(owed)}
        actions={next ? <NextAct row={next} viewer={viewer} takingId={takingId} onTake={onTake} /> : null}
      />
      <CommandProblem problem={problem} />
      <Parts owed={owed} viewer={viewer} part={part} />
      {shown.length > 0 ? (
        <OwedList {...{ shown, viewer, nowMs, takingId, onTake, onAct }} />
      ) : (
        <EmptyState title={owed.length === 0 ? "Nothing is owed" : "Nothing here"}>
          {owed.length === 0
            ? "When a family sends a clip it stands here, with the time it is due."
            : "The other rounds stand under All."}
        </EmptyState>
      )}
      <AwaitedRounds rounds={awaited.filter((row) => isIn(part, row, viewer))} onAct={onAct} />
      <RoundDialogs asked={asked} coaches={coaches} onClose={() => setAsked(null)} />
    </div>
  );
}

interface OwedListProps extends Pick<QueueProps, "viewer" | "nowMs"> {
  shown: readonly OwedRow[];
  takingId: string;
  onTake: (roundId: string) => void;
  onAct: (act: RoundAct, row: OwedRow) => void;
}

function OwedList({ shown, viewer, nowMs, takingId, onTake, onAct }: OwedListProps) {
  const axis = queueAxis(
    shown.map((row) => row.dueAtMs),
    nowMs,
    shown[0]?.zone ?? "UTC",
  );
  const isSiteShown = new Set(shown.map((row) => row.siteName)).size > 1;
  return (
    <>
      <div className={styles.head}>
        <QueueTicks axis={axis} />
      </div>
      <ol className={styles.list} aria-label="Owed, first due first">
        {shown.map((row, index) => (
          <QueueRow
            key={row.roundId}
            place={index + 1}
            isTaking={takingId === row.roundId}
            {...{ row, axis, viewer, isSiteShown, onTake, onAct }}
          />
        ))}
      </ol>
      <p className={styles.keys}>
        Keys in the list: <kbd>j</kbd> <kbd>k</kbd> or the arrows move, <kbd>Enter</kbd> takes or opens,{" "}
        <kbd>Shift</kbd> + <kbd>Enter</kbd> hands over.
      </p>
    </>
  );
}

function NextAct(props: { row: OwedRow; viewer: Viewer; takingId: string; onTake: (id: string) => void }) {
  const { row, viewer, takingId, onTake } = props;
  if (firstActOf(row, viewer) === "go_on") {
    return (
      <LinkButton variant="primary" href={`/reviews/${row.roundId}`}>
        Go on with {row.athleteName}
      </LinkButton>
    );
  }
  return (
    <Button variant="primary" isPending={takingId === row.roundId} onPress={() => onTake(row.roundId)}>
      Take the next: {row.athleteName}
    </Button>
  );
}

function Parts({ owed, viewer, part }: Pick<QueueProps, "owed" | "viewer" | "part">) {
  return (
    <nav aria-label="Which rounds" className={styles.parts}>
      {QUEUE_PARTS.map((each) => (
        <Link
          key={each}
          href={`/reviews?show=${each}`}
          className={styles.part}
          aria-current={each === part ? "true" : undefined}
        >
          {QUEUE_PART_WORDS[each]}
          <span className={styles.count}>{owed.filter((row) => isIn(each, row, viewer)).length}</span>
        </Link>
      ))}
    </nav>
  );
}

function summary(owed: readonly OwedRow[]): string {
  const late = owed.filter((row) => row.lateness.kind === "late").length;
  const free = owed.filter((row) => row.coachPersonId === null).length;
  const parts = [
    `${owed.length} ${owed.length === 1 ? "round is" : "rounds are"} owed`,
    late === 0 ? "none is late" : `${late} ${late === 1 ? "is" : "are"} late`,
    free === 0 ? "" : `${free} nobody has yet`,
  ];
  return `${parts.filter(Boolean).join(", ")}.`;
}
