"use client";
import { useEffect, useRef } from "react";
import { isKeyTaken } from "./is-key-taken";
import { mirrored, PAN_STEP, panBy, wholeAgain, ZOOM_STEP, zoomAt } from "./stage/stage-view";
import type { ClipPlayer } from "./use-clip-player";
import { SPEEDS } from "./use-playback";

/** What the keys do to a clip. */
export interface ClipKeyActs {
  player: ClipPlayer;
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
  ["+ − 0", "nearer, farther, whole picture"],
  ["Alt ← ↑ → ↓", "shift the picture"],
  ["[ ]", "slower, faster"],
  ["M", "mirror"],
] as const;

/** What each key does; those with Alt have it before their name. */
function actOf(event: KeyboardEvent, { player, mark, toMark }: ClipKeyActs): (() => void) | undefined {
  const { look } = player;
  const far = event.shiftKey ? 10 : 1;
  const speeds = SPEEDS.indexOf(player.speed);
  const toSpeed = (place: number) => () => player.setSpeed(SPEEDS[place] ?? player.speed);
  const pan = (x: number, y: number) => () => look((view) => panBy(view, x * PAN_STEP, y * PAN_STEP));
  const acts: [string, (() => void) | undefined][] = [
    [" ", player.toggle],
    ["ArrowLeft", () => player.step(-far)],
    ["ArrowRight", () => player.step(far)],
    ["j", toMark && (() => toMark(-1))],
    ["k", toMark && (() => toMark(1))],
    ["+", () => look((view) => zoomAt(view, ZOOM_STEP))],
    ["-", () => look((view) => zoomAt(view, 1 / ZOOM_STEP))],
    ["0", () => look(wholeAgain)],
    ["[", toSpeed(speeds + 1)],
    ["]", toSpeed(speeds - 1)],
    ["m", () => look(mirrored)],
    ["Alt ArrowLeft", pan(1, 0)],
    ["Alt ArrowRight", pan(-1, 0)],
    ["Alt ArrowUp", pan(0, 1)],
    ["Alt ArrowDown", pan(0, -1)],
  ];
  const key = event.key === "=" ? "+" : event.key;
  if (!event.altKey && /^[1-6]$/.test(key)) return mark && (() => mark(Number(key) - 1));
  return new Map(acts).get(event.altKey ? `Alt ${key}` : key);
}

/** Whether a key was for the clip; what it does is done. */
function pressed(event: KeyboardEvent, acts: ClipKeyActs): boolean {
  const act = actOf(event, acts);
  act?.();
  return act !== undefined;
}

/** Lets the keyboard drive the clip while it is on the screen. */
export function useClipKeys(acts: ClipKeyActs): void {
  const latest = useRef(acts);
  latest.current = acts;
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (!isKeyTaken(event, { isAltFree: true }) && pressed(event, latest.current)) event.preventDefault();
    };
    window.addEventListener("keydown", listen);
    return () => window.removeEventListener("keydown", listen);
  }, []);
}
