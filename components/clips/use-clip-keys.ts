"use client";
import { useEffect, useRef } from "react";
import { isKeyTaken } from "./is-key-taken";

/** What the keys do to a clip. */
export interface ClipKeyActs {
  step: (frames: number) => void;
  toggle: () => void;
  /** Marks an event by its place in the delivery, 0 to 5; left out where nothing is marked. */
  mark?: (place: number) => void;
  /** To the marked moment before (-1) or after (1) the picture. */
  toMark?: (direction: -1 | 1) => void;
}

/** The keys in words, for the list beside the clip. */
export const CLIP_KEYS = [
  ["Space", "play or stop"],
  ["← →", "one frame"],
  ["Shift ← →", "ten frames"],
  ["J K", "marked moment before, after"],
  ["1 to 6", "mark the moment on this frame"],
] as const;

/** Whether a key was for the clip; what it does is done. */
function pressed(event: KeyboardEvent, acts: ClipKeyActs): boolean {
  const far = event.shiftKey ? 10 : 1;
  const place = Number(event.key) - 1;
  const table = new Map<string, (() => void) | undefined>([
    [" ", acts.toggle],
    ["ArrowLeft", () => acts.step(-far)],
    ["ArrowRight", () => acts.step(far)],
    ["j", acts.toMark && (() => acts.toMark?.(-1))],
    ["k", acts.toMark && (() => acts.toMark?.(1))],
  ]);
  const act = /^[1-6]$/.test(event.key) ? acts.mark && (() => acts.mark?.(place)) : table.get(event.key);
  act?.();
  return act !== undefined;
}

/** Lets the keyboard drive the clip while it is on the screen. */
export function useClipKeys(acts: ClipKeyActs): void {
  const latest = useRef(acts);
  latest.current = acts;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (!isKeyTaken(event) && pressed(event, latest.current)) event.preventDefault();
    };
    window.addEventListener("keydown", listen);
    return () => window.removeEventListener("keydown", listen);
  }, []);
}
