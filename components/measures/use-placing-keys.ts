"use client";
import { useEffect, useRef } from "react";
import { isKeyTaken } from "@/components/clips/is-key-taken";
import { isAllPlaced, nextFrame, type Placing } from "./placing";
import type { PointsInHand } from "./use-points-in-hand";

/** How far an arrow key moves a point, in source pixels, and how far with Shift. */
const STEP_PX = 1;
const FAR_PX = 10;

const ARROWS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The keys in words, for the list beside the clip. */
export const PLACING_KEYS = [
  ["← ↑ → ↓", "move the point by one source pixel, with Shift by ten"],
  ["Enter", "take the point, on to the next"],
  ["Backspace", "a point back"],
  ["Esc", "put the points down"],
] as const;

/** Whether the arrow keys are for a point; else they are the clip's, to step to a frame. */
export function movesPoint(placing: Placing): boolean {
  if (placing.cross !== null || placing.selected !== null) return true;
  return !isAllPlaced(placing) && nextFrame(placing) !== null;
}

/** Lets the keyboard place points while there are some to place; its keys come before the clip's. */
export function usePlacingKeys(hand: PointsInHand | null): void {
  const latest = useRef(hand);
  latest.current = hand;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      const act = latest.current && !isKeyTaken(event) ? actOf(event, latest.current) : undefined;
      if (!act) return;
      event.preventDefault();
      event.stopPropagation();
      act();
    };
    window.addEventListener("keydown", listen, { capture: true });
    return () => window.removeEventListener("keydown", listen, { capture: true });
  }, []);
}

function actOf(event: KeyboardEvent, hand: PointsInHand): (() => void) | undefined {
  const arrow = ARROWS[event.key];
  const far = event.shiftKey ? FAR_PX : STEP_PX;
  if (arrow) {
    // A mirrored picture moves the way the key points, as it is seen.
    const across = hand.player.view.isMirrored ? -arrow[0] : arrow[0];
    return movesPoint(hand.placing) ? () => hand.nudge(across * far, arrow[1] * far) : undefined;
  }
  const isForButton = event.target instanceof Element && event.target.closest("button, a, summary") !== null;
  const acts: Record<string, (() => void) | undefined> = {
    Enter: isForButton ? undefined : hand.take,
    Backspace: hand.back,
    Escape: hand.leave,
  };
  return acts[event.key];
}
