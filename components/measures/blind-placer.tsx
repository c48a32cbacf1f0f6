"use client";
import { type ReactNode, useEffect, useState } from "react";
import type { PlayedClip } from "@/components/clips/played-clip";
import { Player } from "@/components/clips/player";
import type { filmFacts } from "@/components/clips/player-state";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import { type ClipPlayer, useClipPlayer } from "@/components/clips/use-clip-player";
import { Button } from "@/components/ui/button";
import { CommandProblem } from "@/components/wire/command-problem";
import type { Problem } from "@/components/wire/problem";
import type { FramesOfPoints } from "@/server/domain/mechanics/measure-again";
import { MEASURES, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import type { MeasuredPoint, Place } from "@/server/domain/reviews/draft";
import styles from "./measures.module.css";
import { PointPlacer } from "./point-placer";

/** What was placed blind: points in the order asked for, and where a held finish ends. */
export interface PlacedBlind {
  points: Place[];
  untilFrame: number | null;
}

/** What a {@link BlindPlacer} takes. */
export interface BlindPlacerProps {
  clip: PlayedClip;
  /** What a player is told of the film; see `filmFacts`. */
  film: ReturnType<typeof filmFacts>;
  /** What the clip is called when it is read out. */
  label: string;
  kind: MeasureKind;
  /** The frames, counted from 0, on which the points lie. */
  frames: FramesOfPoints;
  /** The command that keeps them: whether it is under way, and why it was not done. */
  command: { pending: boolean; problem: Problem | null };
  keepText: string;
  onKeep: (placed: PlacedBlind) => void;
  /** Other ways on, beside the button that keeps. */
  children?: ReactNode;
}

/** A clip on which a measure is taken on given frames, with nothing in sight of what was placed before. */
export function BlindPlacer(props: BlindPlacerProps) {
  const { clip, film, label, kind, frames, command, keepText, onKeep, children } = props;
  const player = useClipPlayer(clip);
  const [points, setPoints] = useState<readonly MeasuredPoint[]>([]);
  const asked = MEASURES[kind].points;
  const isHeld = asked.length === 0;
  const isReady = isHeld ? player.inHand > frames.here : points.length === asked.length;
  const keep = () =>
    onKeep({ points: points.map(({ x, y }) => ({ x, y })), untilFrame: isHeld ? player.inHand : null });
  const stage = { player, label, state: film };
  const isShown = clip.state === "ready";
  const acts = (
    <>
      <CommandProblem problem={command.problem} />
      <div className={styles.blindActs}>
        {isShown ? (
          <Button variant="primary" isDisabled={!isReady} isPending={command.pending} onPress={keep}>
            {keepText}
          </Button>
        ) : null}
        {children}
      </div>
    </>
  );
  if (!isShown) {
    return (
      <>
        <Player {...stage} />
        {acts}
      </>
    );
  }
  if (isHeld) {
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
      <p className={styles.heldWords} role="status">
        Held from frame {from + 1}. Step to the last frame on which it is held
        {frames < 0
          ? ", which comes after it."
          : `: ${frames === 1 ? "1 frame" : `${frames} frames`} so far.`}
      </p>
      {children}
    </>
  );
}
