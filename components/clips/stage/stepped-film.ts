import type { RefObject } from "react";
import { seekTargetMs } from "../frame-table";
import { clipVideoAddress } from "../played-clip";
import { showFrame } from "../show-frame";
import { FrameWindow, type FrameWindowEvents, type HeldFrame } from "./frame-window";
import type { LoopClock } from "./held-loop";
import { openFrames } from "./open-frames";
import { paintHeld } from "./paint-held";
import type { PictureSize } from "./picture-place";
import type { Place } from "./place";
import type { SteppedElement, SteppingParts } from "./stepping-parts";

/** A film on its stage, and who is told of its place. */
export interface FilmOnStage {
  video: HTMLVideoElement;
  /** Lies over the film for the pictures that are held decoded. */
  canvas: RefObject<HTMLCanvasElement | null>;
  size: RefObject<PictureSize>;
  id: string;
  frameTimesMs: readonly number[];
  tell: (place: Place) => void;
}

/**
 * What stepping drives, of a film in a page. A class, and no functions made within a hook: those would each hold on to
 * what the one before them held, and so to every film that was ever opened.
 */
export class SteppedFilm implements SteppingParts {
  readonly frameTimesMs: readonly number[];
  readonly film: SteppedElement;
  readonly clock: LoopClock;
  readonly tell: (place: Place) => void;

  constructor(private readonly on: FilmOnStage) {
    this.frameTimesMs = on.frameTimesMs;
    this.film = new FilmElement(on.video, on.frameTimesMs);
    this.clock = new FilmClock(on.video);
    this.tell = on.tell;
  }

  async openWindow(events: FrameWindowEvents): Promise<FrameWindow | null> {
    const { id, frameTimesMs, size } = this.on;
    const source = await openFrames({ address: clipVideoAddress(id), frameTimesMs, size: size.current });
    return source && new FrameWindow(source, frameTimesMs.length, events);
  }

  paint(held: HeldFrame): void {
    paintHeld(held, this.on.canvas.current, this.on.size.current);
  }
}

class FilmElement implements SteppedElement {
  constructor(
    private readonly video: HTMLVideoElement,
    private readonly timesMs: readonly number[],
  ) {}

  seek(frame: number, signal: AbortSignal): Promise<boolean> {
    return showFrame(this.video, this.timesMs, frame, signal);
  }

  moveTo(frame: number): void {
    this.video.currentTime = seekTargetMs(this.timesMs, frame, 0.5, this.video.duration * 1000) / 1000;
  }

  isSeeking(): boolean {
    return this.video.seeking;
  }

  play(): Promise<void> {
    return this.video.play();
  }

  pause(): void {
    this.video.pause();
  }

  isPlaying(): boolean {
    return !this.video.paused && !this.video.ended;
  }

  hasEnded(): boolean {
    return this.video.ended;
  }
}

/** The redraws of the screen, and the speed that the film is set to. */
class FilmClock implements LoopClock {
  constructor(private readonly video: HTMLVideoElement) {}

  atRedraw(act: (nowMs: number) => void): () => void {
    const handle = requestAnimationFrame(act);
    return () => cancelAnimationFrame(handle);
  }

  rate(): number {
    return this.video.playbackRate;
  }
}
