"use client";
import { useEffect, useRef } from "react";
import { isKeyTaken } from "@/components/clips/is-key-taken";

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

/** What the keys do while points are placed. */
export interface PlacingKeyActs {
  /** Moves what is in hand, in source pixels; left out while the arrow keys are the clip's, to step to a frame. */
  nudge?: ((x: number, y: number) => void) | undefined;
  /** In a mirrored picture a point moves the way the key points, as it is seen. */
  isMirrored: boolean;
  take: () => void;
  back: () => void;
  leave?: (() => void) | undefined;
}

/** Lets the keyboard place points while there are some to place; its keys come before the clip's. */
export function usePlacingKeys(acts: PlacingKeyActs | null): void {
  const latest = useRef(acts);
  latest.current = acts;
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

function actOf(event: KeyboardEvent, acts: PlacingKeyActs): (() => void) | undefined {
  const { nudge, isMirrored } = acts;
  const arrow = ARROWS[event.key];
  if (arrow) {
    const far = event.shiftKey ? FAR_PX : STEP_PX;
    return nudge && (() => nudge((isMirrored ? -arrow[0] : arrow[0]) * far, arrow[1] * far));
  }
  const isForButton = event.target instanceof Element && event.target.closest("button, a, summary") !== null;
  const table: Record<string, (() => void) | undefined> = {
    Enter: isForButton ? undefined : acts.take,
    Backspace: acts.back,
    Escape: acts.leave,
  };
  return table[event.key];
}
