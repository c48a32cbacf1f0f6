"use client";
import { useEffect, useRef } from "react";
import type { MarkedFrames } from "./event-strip";
import { isKeyTaken } from "./is-key-taken";
import { loopFromHere } from "./stage/loop-span";
import { mirrored, PAN_STEP, panBy, wholeAgain, ZOOM_STEP, zoomAt } from "./stage/stage-view";
import { type Hold, useHold } from "./stage/use-hold";
import type { ClipPlayer } from "./use-clip-player";
import { SPEEDS } from "./use-playback";

/** What the keys do to a clip. */
export interface ClipKeyActs {
  player: ClipPlayer;
  /** Marks an event by its place in the delivery, 0 to 5; left out where nothing is marked. */
  mark?: (place: number) => void;
  /** To the marked moment before (-1) or after (1) the picture. */
  toMark?: (direction: -1 | 1) => void;
  /** The marked moments, for what is played over and over. */
  marks?: MarkedFrames;
}

/** The keys in words, for the list beside the clip. */
export const CLIP_KEYS = [
  ["Space", "play or stop"],
  ["← →", "one frame; hold to go on"],
  ["Shift ← →", "ten frames"],
  ["J K", "marked moment before, after"],
  ["1 to 6", "mark the moment on this frame"],
  ["+ − 0", "nearer, farther, whole picture"],
  ["Alt ← ↑ → ↓", "shift the picture"],
  ["[ ]", "slower, faster"],
  ["M", "mirror"],
  ["L", "play over and over, between the marked moments round this frame"],
] as const;

/** How far an arrow key steps; none for another key. */
function stepOf({ key, altKey, shiftKey }: KeyboardEvent): number {
  const far = shiftKey ? 10 : 1;
  if (altKey) return 0;
  return key === "ArrowLeft" ? -far : key === "ArrowRight" ? far : 0;
}

/** What each key does; those with Alt have it before their name. */
function actOf(
  event: KeyboardEvent,
  { player, mark, toMark, marks }: ClipKeyActs,
  hold: Hold,
): (() => void) | undefined {
  const step = stepOf(event);
  if (step !== 0) return () => (event.repeat ? hold.goOn(step) : player.step(step));
  const { look } = player;
  const speeds = SPEEDS.indexOf(player.speed);
  const toSpeed = (place: number) => () => player.setSpeed(SPEEDS[place] ?? player.speed);
  const pan = (x: number, y: number) => () => look((view) => panBy(view, x * PAN_STEP, y * PAN_STEP));
  const keys: [string, (() => void) | undefined][] = [
    [" ", player.toggle],
    ["j", toMark && (() => toMark(-1))],
    ["k", toMark && (() => toMark(1))],
    ["+", () => look((view) => zoomAt(view, ZOOM_STEP))],
    ["-", () => look((view) => zoomAt(view, 1 / ZOOM_STEP))],
    ["0", () => look(wholeAgain)],
    ["[", toSpeed(speeds + 1)],
    ["]", toSpeed(speeds - 1)],
    ["m", () => look(mirrored)],
    ["l", () => loopFromHere(player, marks)],
    ["Alt ArrowLeft", pan(1, 0)],
    ["Alt ArrowRight", pan(-1, 0)],
    ["Alt ArrowUp", pan(0, 1)],
    ["Alt ArrowDown", pan(0, -1)],
  ];
  const key = event.key === "=" ? "+" : event.key.length === 1 ? event.key.toLowerCase() : event.key;
  if (!event.altKey && /^[1-6]$/.test(key)) return mark && (() => mark(Number(key) - 1));
  return new Map(keys).get(event.altKey ? `Alt ${key}` : key);
}

/** Of most keys only the press counts. */
const isMoreWhenHeld = ({ key }: KeyboardEvent): boolean => /^([-+=]|Arrow.+)$/.test(key);

/** Lets the keyboard drive the clip while it is on the screen. */
export function useClipKeys(acts: ClipKeyActs): void {
  const latest = useRef(acts);
  latest.current = acts;
  const hold = useHold((frames) => latest.current.player.step(frames));
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const act = isKeyTaken(event, { isAltFree: true }) ? undefined : actOf(event, latest.current, hold);
      if (!act) return;
      event.preventDefault();
      if (!event.repeat || isMoreWhenHeld(event)) act();
    };
    const release = (event: KeyboardEvent) => {
      if (event.key.startsWith("Arrow")) hold.end();
    };
    window.addEventListener("keydown", press);
    window.addEventListener("keyup", release);
    return () => {
      window.removeEventListener("keydown", press);
      window.removeEventListener("keyup", release);
    };
  }, [hold]);
}
