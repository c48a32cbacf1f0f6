"use client";
import { useEffect, useRef, useState } from "react";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import type { MeasuredPoint, Place } from "@/server/domain/reviews/draft";
import {
  goBack,
  isAllPlaced,
  mayPlaceOn,
  movePlaced,
  movesPoint,
  nextAsked,
  nextFrame,
  nudge,
  type Placing,
  type PointFrames,
  placeNext,
  takeNextInHand,
} from "./placing";
import { keptPlace, middleInSight } from "./stage-places";
import { usePlacingKeys } from "./use-placing-keys";

/** What is placed, and what comes of it. */
export interface PointsToPlace {
  player: ClipPlayer;
  /** Null while nothing is being placed. */
  placing: Placing | null;
  onPlacing: (placing: Placing) => void;
  /** Every point is placed, or one of them was moved since. */
  onPoints: (points: readonly MeasuredPoint[]) => void;
  /** The points are put down: all of them placed, or given up. */
  onLeave?: (() => void) | undefined;
  /** Where to begin to look for a frame that is not known yet. */
  suggested?: PointFrames;
}

/** Points in hand: what pointer, keys and buttons do to them. */
export interface PointsInHand {
  player: ClipPlayer;
  placing: Placing;
  /** A point that the pointer holds: a placed one by its index, or the next (null). */
  held: { index: number | null; at: Place } | null;
  /** Whether a point is being moved just now, so that it is shown enlarged. */
  isFine: boolean;
  hold: (index: number | null, at: Place) => void;
  moveHeld: (at: Place) => void;
  letGo: () => void;
  /** Lets go without placing, as when a second finger comes. */
  drop: () => void;
  select: (index: number) => void;
  /** Moves the cross or the selected point, in source pixels; brings the cross where there is neither. */
  nudge: (x: number, y: number) => void;
  /** Takes the point in hand and asks for the next; with all of them placed it puts them down. */
  take: () => void;
  back: () => void;
  leave: (() => void) | undefined;
}

/** Holds points that are placed on a clip; null while none are. */
export function usePointsInHand(given: PointsToPlace): PointsInHand | null {
  const { player, placing, onPlacing, onPoints, onLeave } = given;
  const [held, setHeld] = useState<PointsInHand["held"]>(null);
  const [isFine, setFine] = useState(false);
  useFramesOf(given);

  const change = (next: Placing) => {
    if (!placing || next === placing) return;
    onPlacing(next);
    if (isAllPlaced(next) && next.placed !== placing.placed) onPoints(next.placed);
  };
  const hand: PointsInHand | null = placing && {
    player,
    placing,
    held,
    isFine: isFine || placing.cross !== null,
    hold: (index, at) => {
      player.pause();
      const must = nextFrame(placing);
      if (index === null && isAllPlaced(placing)) return;
      if (index === null && must !== null && must !== player.inHand) return player.show(must);
      if (index === null && !mayPlaceOn(placing, player.inHand)) return;
      setHeld({ index, at: keptPlace(at, player.size) });
    },
    moveHeld: (at) => setHeld((now) => now && { ...now, at: keptPlace(at, player.size) }),
    letGo: () => {
      if (!held) return;
      setHeld(null);
      setFine(false);
      const { index, at } = held;
      change(index === null ? placeNext(placing, at, player.inHand) : movePlaced(placing, index, at));
    },
    drop: () => setHeld(null),
    select: (index) => {
      const point = placing.placed[index];
      if (!point) return;
      setFine(false);
      if (point.frame !== player.inHand) player.show(point.frame);
      if (placing.selected !== index) onPlacing({ ...placing, cross: null, selected: index });
    },
    nudge: (x, y) => {
      setFine(true);
      const now = placing.cross ?? placing.selected;
      change(nudge(now === null ? crossed(placing, player) : placing, x, y, player.size));
    },
    take: () => {
      setFine(false);
      if (isAllPlaced(placing)) return onLeave?.();
      if (placing.cross === null) return change(crossed(placing, player));
      const next = placeNext(placing, keptPlace(placing.cross, player.size), player.inHand);
      change(next);
      if (isAllPlaced(next)) onLeave?.();
    },
    back: () => {
      const last = placing.placed.at(-1);
      if (last && last.frame !== player.inHand) player.show(last.frame);
      onPlacing(goBack(placing));
    },
    leave: onLeave,
  };
  usePlacingKeys(
    hand && {
      ...hand,
      isMirrored: player.view.isMirrored,
      nudge: movesPoint(hand.placing) ? hand.nudge : undefined,
    },
  );
  return hand;
}

/** The cross for the next point: beside the one placed last when that lies on the same frame, else in the middle. */
function crossed(placing: Placing, player: ClipPlayer): Placing {
  const last = placing.placed.at(-1);
  const from = last && last.frame === nextFrame(placing) ? last : middleInSight(player);
  return mayPlaceOn(placing, player.inHand) ? takeNextInHand(placing, keptPlace(from, player.size)) : placing;
}

/** Brings the frame on the picture that the next point belongs to, or one to begin to look from. */
function useFramesOf({ player, placing, suggested }: PointsToPlace): void {
  const next = placing && nextAsked(placing);
  const must = placing && nextFrame(placing);
  const sort = next?.on ?? null;
  const isThere = player.picture === "ready";
  const latest = useRef({ player, suggested });
  latest.current = { player, suggested };
  useEffect(() => {
    const now = latest.current;
    const to = must ?? (sort === null ? undefined : now.suggested?.[sort]);
    if (isThere && to !== undefined && to !== now.player.inHand) now.player.show(to);
  }, [sort, must, isThere]);
}
