"use client";
import Link from "next/link";
import { type ReactNode, useEffect, useState } from "react";
import { Player } from "@/components/clips/player";
import { filmFacts } from "@/components/clips/player-state";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { type ClipPlayer, useClipPlayer } from "@/components/clips/use-clip-player";
import { PointPlacer } from "@/components/measures/point-placer";
import { Button } from "@/components/ui/button";
import { LinkButton } from "@/components/ui/link-button";
import { Notice } from "@/components/ui/notice";
import { PageHeading } from "@/components/ui/page-heading";
import type { Answers } from "@/components/wire/answers";
import { CommandProblem } from "@/components/wire/command-problem";
import { useCommand } from "@/components/wire/use-command";
import type { BlindView } from "@/server/api/measurements/shapes";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { valueWithSide } from "@/server/domain/mechanics/measure-value";
import type { MeasuredPoint } from "@/server/domain/reviews/draft";
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
  const player = useClipPlayer(clip);
  const [points, setPoints] = useState<readonly MeasuredPoint[]>([]);
  const keep = useCommand(
    (api, input: { points: { x: number; y: number }[]; untilFrame: number | null }, once) =>
      api.measurements.measureAgain.mutate({ requestId, ...input }, once),
    { refresh: false },
  );
  const asked = MEASURES[kind].points;
  const isReady = asked.length === 0 ? player.inHand > frames.here : points.length === asked.length;
  async function submit() {
    const placed = points.map(({ x, y }) => ({ x, y }));
    const done = await keep.run({ points: placed, untilFrame: asked.length === 0 ? player.inHand : null });
    if (done) onDone(done);
  }
  const stage = { player, label: `The clip of ${blind.athleteName}`, state: filmFacts(clip, drawing) };
  if (clip.state !== "ready") return <Player {...stage} />;
  const acts = (
    <>
      <CommandProblem problem={keep.problem} />
      <div className={styles.acts}>
        <Button variant="primary" isDisabled={!isReady} isPending={keep.pending} onPress={submit}>
          Keep this measure
        </Button>
        <LinkButton variant="link" href="/reviews/measure-again">
          Leave it
        </LinkButton>
      </div>
    </>
  );
  if (asked.length === 0) {
    return (
      <Held {...stage} from={frames.here}>
        {acts}
      </Held>
    );
  }
  return (
    <PointPlacer {...{ ...stage, asked, frames }} title={MEASURES[kind].words} onPoints={setPoints}>
      {acts}
    </PointPlacer>
  );
}

interface HeldProps {
  player: ClipPlayer;
  label: string;
  state: ReturnType<typeof filmFacts>;
  from: number;
  children: ReactNode;
}

/** A held finish has no points: whoever measures it goes to the last frame on which it is held. */
function Held({ player, label, state, from, children }: HeldProps) {
  useClipKeys({ player });
  const { show, picture } = player;
  /* It begins on its first frame, as soon as there is a picture. */
  // biome-ignore lint/correctness/useExhaustiveDependencies: stepping on from there must not lead back
  useEffect(() => {
    if (picture === "ready") show(from);
  }, [from, picture]);
  const frames = player.inHand - from;
  return (
    <>
      <Player {...{ player, label, state }} />
      <p className={styles.words} role="status">
        Held from frame {from + 1}. Step to the last frame on which it is held
        {frames < 0
          ? ", which comes after it."
          : `: ${frames === 1 ? "1 frame" : `${frames} frames`} so far.`}
      </p>
      {children}
    </>
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
