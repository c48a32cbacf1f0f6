import type { FrameWindow, FrameWindowEvents, HeldFrame } from "./frame-window";
import type { LoopClock } from "./held-loop";
import type { Place } from "./place";

/** The film's element, as far as stepping and playing need it. */
export interface SteppedElement {
  /** Puts a frame on the film's picture. @returns whether it is there */
  seek: (frame: number, signal: AbortSignal) => Promise<boolean>;
  /** Begins to go to a frame and does not wait. */
  moveTo: (frame: number) => void;
  isSeeking: () => boolean;
  /** Plays on from where the film stands; rejected when the browser will not, or when it is stopped before it began. */
  play: () => Promise<void>;
  pause: () => void;
  isPlaying: () => boolean;
  hasEnded: () => boolean;
}

/** What a `Stepping` drives. */
export interface SteppingParts {
  frameTimesMs: readonly number[];
  film: SteppedElement;
  /** By which held pictures are played. */
  clock: LoopClock;
  /** Opens the window of decoded pictures; null where there is none to be had. */
  openWindow: (events: FrameWindowEvents) => Promise<FrameWindow | null>;
  paint: (held: HeldFrame) => void;
  tell: (place: Place) => void;
}
