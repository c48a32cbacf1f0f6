"use client";
import { type ReactNode, useState } from "react";
import { Player, type PlayerProps } from "@/components/clips/player";
import { useClipKeys } from "@/components/clips/use-clip-keys";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import type { MeasurePoint } from "@/server/domain/mechanics/measure-kind";
import type { MeasuredPoint } from "@/server/domain/reviews/draft";
import { beginPlacing, type PointFrames } from "./placing";
import { PlacingBar } from "./placing-bar";
import { PointsOverlay } from "./points-overlay";
import { usePointsInHand } from "./use-points-in-hand";

/** What a {@link PointPlacer} takes. */
export interface PointPlacerProps {
  player: ClipPlayer;
  /** What the clip is; see the player. */
  label: string;
  state: PlayerProps["state"];
  /** What is being placed, e.g. "Front-knee flexion". */
  title: string;
  /** The points in the order in which they are asked for. */
  asked: readonly MeasurePoint[];
  /** The frames, counted from 0, on which they lie; one that is left out is looked for by who places them. */
  frames: PointFrames;
  /** Every point is placed, or one of them was moved since; in the order asked for, in source pixels. */
  onPoints: (points: readonly MeasuredPoint[]) => void;
  /** Under what is asked for, e.g. why no measure comes of it. */
  outcome?: ReactNode;
  /** What can be done with the points, in the same bar. */
  children?: ReactNode;
}

/** A clip on which points are placed, with nothing else drawn on it. To begin anew it is given another `key`. */
export function PointPlacer(props: PointPlacerProps) {
  const { player, label, state, title, asked, frames, onPoints, outcome, children } = props;
  const [placing, onPlacing] = useState(() => beginPlacing(asked, frames));
  const hand = usePointsInHand({ player, placing, onPlacing, onPoints });
  useClipKeys({ player });
  return (
    <div>
      <Player
        {...{ player, label, state }}
        isHandTaken
        overlay={(stage) => (hand ? <PointsOverlay hand={hand} stage={stage} /> : null)}
      />
      {hand ? <PlacingBar {...{ hand, title, outcome, children }} /> : null}
    </div>
  );
}
