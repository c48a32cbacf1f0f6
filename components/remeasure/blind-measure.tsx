"use client";
import Link from "next/link";
import { useState } from "react";
import { filmFacts } from "@/components/clips/player-state";
import { BlindPlacer, type PlacedBlind } from "@/components/measures/blind-placer";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import type { Answers } from "@/components/wire/answers";
import { useCommand } from "@/components/wire/use-command";
import type { BlindView } from "@/server/api/measurements/shapes";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { valueWithSide } from "@/server/domain/mechanics/measure-value";
import styles from "./remeasure.module.css";
import { onFrame } from "./remeasure-words";

type Both = Answers["measurements"]["measureAgain"];

/** A frame that is measured a second time. What was placed before, and what it was worth, comes only once it is done. */
export function BlindMeasure({ blind }: { blind: BlindView }) {
  const [both, setBoth] = useState<Both | null>(null);
  return (
    <div className={styles.blind}>
      <PageHeading
        question={
          both
            ? "How near are the two?"
            : `Where would you place ${blind.kind === "finish_hold" ? "its end" : "the points"}?`
        }
        place={
          <>
            <Link href="/reviews/measure-again">Measure again</Link>
            {` / ${MEASURES[blind.kind].words} of ${blind.athleteName}, ${onFrame(blind)}`}
          </>
        }
        detail={both ? null : "It was measured before; you see neither its points nor its value."}
      />
      {both ? <BothValues both={both} /> : <Placing blind={blind} onDone={setBoth} />}
    </div>
  );
}

function Placing({ blind, onDone }: { blind: BlindView; onDone: (both: Both) => void }) {
  const { requestId, kind, clip, drawing, frames } = blind;
  const keep = useCommand(
    (api, input: PlacedBlind, once) => api.measurements.measureAgain.mutate({ requestId, ...input }, once),
    { refresh: false },
  );
  async function submit(placed: PlacedBlind) {
    const done = await keep.run(placed);
    if (done) onDone(done);
  }
  return (
    <BlindPlacer
      {...{ clip, kind, frames, film: filmFacts(clip, drawing), command: keep }}
      label={`The clip of ${blind.athleteName}`}
      keepText="Keep this measure"
      onKeep={(placed) => void submit(placed)}
    >
      <LinkButton variant="link" href="/reviews/measure-again">
        Leave it
      </LinkButton>
    </BlindPlacer>
  );
}

function BothValues({ both: { kind, first, again } }: { both: Both }) {
  return (
    <Notice
      kind="held"
      title={`Now ${valueWithSide(kind, again)}, before ${valueWithSide(kind, first)}`}
      actions={
        <LinkButton isSmall variant="primary" href="/reviews/measure-again">
          On to the next
        </LinkButton>
      }
    >
      Both are kept. What was sent to the family stays as it was; the error of{" "}
      {MEASURES[kind].words.toLowerCase()} takes both into account.
    </Notice>
  );
}
