import { clampFrame } from "../frame-table";
import type { FrameWindow, FrameWindowEvents, HeldFrame } from "./frame-window";
import type { LoopSpan } from "./loop-span";

/** Where the picture of a clip stands. Frames count from 0. */
export interface Place {
  /** The frame on the picture, by the word of the browser or of the decoded picture itself. */
  frame: number;
  /** The frame asked for; differs from `frame` while the picture follows. */
  wanted: number;
  /** False when the browser would not show the very frame that was asked for. */
  isExact: boolean;
  /** What is seen: the film, or the canvas over it. */
  shownBy: "film" | "canvas";
  /** Whether decoded pictures are held ready, or the film is sought one by one. */
  source: "decoded" | "film";
}

/** As a clip is opened. */
export const FIRST_PLACE: Place = { frame: 0, wanted: 0, isExact: true, shownBy: "film", source: "film" };

/** What a {@link Stepping} drives. */
export interface SteppingParts {
  frameTimesMs: readonly number[];
  /** The film's element. */
  film: {
    /** Puts a frame on the film's picture. @returns whether it is there */
    seek: (frame: number, signal: AbortSignal) => Promise<boolean>;
    /** Begins to go to a frame and does not wait. */
    moveTo: (frame: number) => void;
    isSeeking: () => boolean;
  };
  /** Opens the window of decoded pictures; null where there is none to be had. */
  openWindow: (events: FrameWindowEvents) => Promise<FrameWindow | null>;
  paint: (held: HeldFrame) => void;
  tell: (place: Place) => void;
}

/** Whoever pulls the scale asks for the next frame before this; the machine is theirs until then. Common practice, no source. */
const AFTER_SEEK_MS = 60;

/**
 * Why a seek is given up. A word, since the error that a browser would make of none holds on to all that was under way:
 * through it each clip would keep the film of the one before.
 */
const GONE_ON = "gone on";

interface Asked {
  frame: number;
  whenShown: (() => void) | undefined;
}

/**
 * Brings the latest frame asked for onto the picture: at once where it is held decoded, otherwise by seeking in the film,
 * one seek at a time; those asked for meanwhile are passed over.
 */
export class Stepping {
  private place: Place;
  private asked: Asked | null;
  private isReady = false;
  private isPlaying = false;
  private isOver = false;
  private isFollowing = false;
  /** The frame under the canvas, by the browser's word. */
  private filmFrame = 0;
  /** The still picture lies over the film until the first seek, whatever frame is under it. */
  private isCovered = true;
  private seek = new AbortController();
  private window: FrameWindow | null = null;
  /** Counts openings, so that one which comes too late is known. */
  private opening = 0;
  private loop: LoopSpan | null = null;
  private settling: ReturnType<typeof setTimeout> | undefined;
  private windowState: "none" | "opening" | "open" | "refused" = "none";

  constructor(
    private readonly parts: SteppingParts,
    startFrame: number,
  ) {
    const frame = clampFrame(parts.frameTimesMs, startFrame);
    this.asked = { frame, whenShown: undefined };
    this.place = { ...FIRST_PLACE, wanted: frame };
  }

  /** The frame that the next step counts from: the one asked for last, be it drawn or not. */
  aim(): number {
    return this.asked?.frame ?? this.place.frame;
  }

  /** The film can be sought from now on. */
  ready(): void {
    this.isReady = true;
    void this.follow();
  }

  show(frame: number, whenShown?: () => void): void {
    const within = clampFrame(this.parts.frameTimesMs, frame);
    this.isPlaying = false;
    this.asked = { frame: within, whenShown };
    if (this.showHeld()) return;
    this.set({ wanted: within });
    if (this.window?.isComing(within)) this.window.aim(within);
    else this.window?.rest();
    if (this.isReady) void this.follow();
  }

  /** The film is about to play; it goes on from the frame on the picture, or from another. */
  start(from?: number): void {
    const frame = from ?? this.aim();
    this.asked = null;
    this.isPlaying = true;
    this.isCovered = false;
    this.seek.abort(GONE_ON);
    this.window?.rest();
    if (from !== undefined || this.filmFrame !== frame || this.parts.film.isSeeking())
      this.parts.film.moveTo(frame);
  }

  /** The film plays no more. */
  stop(): void {
    if (!this.isPlaying) return;
    this.isPlaying = false;
    this.settle();
  }

  /** Frames that are played over and over from now on; null plays on to the end. */
  loopIn(loop: LoopSpan | null): void {
    this.loop = loop;
  }

  /** The browser has put a picture of the film on the screen. */
  filmTold(frame: number): void {
    this.filmFrame = frame;
    if (this.isPlaying && !this.parts.film.isSeeking()) {
      this.set({ frame, wanted: frame, shownBy: "film" });
      if (this.isPastLoop(frame)) this.start(this.loop?.from);
    } else if (this.place.shownBy === "film") this.set({ frame, ...(this.asked ? {} : { wanted: frame }) });
  }

  /** Lets go of everything that is held; what is on the picture stays. */
  letGo(): void {
    this.opening += 1;
    this.window?.close();
    this.window = null;
    if (this.windowState !== "refused") this.windowState = "none";
  }

  /** Holds pictures again after {@link letGo}. */
  takeUp(): void {
    if (this.isReady && !this.asked) this.settle();
  }

  end(): void {
    this.isOver = true;
    clearTimeout(this.settling);
    this.seek.abort(GONE_ON);
    this.letGo();
  }

  /** The last frame is the end of the film: it goes back from the one before. */
  private isPastLoop(frame: number): boolean {
    return this.loop !== null && frame >= Math.min(this.loop.to, this.parts.frameTimesMs.length - 2);
  }

  private set(change: Partial<Place>): void {
    if (this.isOver) return;
    const source = this.windowState === "open" ? "decoded" : "film";
    this.place = { ...this.place, source, ...change };
    this.parts.tell(this.place);
  }

  /** Paints the frame asked for when it is held. */
  private showHeld(): boolean {
    const { asked } = this;
    const held = asked && this.window?.at(asked.frame);
    if (!asked || !held) return false;
    this.seek.abort(GONE_ON);
    this.isCovered = false;
    this.parts.paint(held);
    this.asked = null;
    this.set({ frame: asked.frame, wanted: asked.frame, isExact: true, shownBy: "canvas" });
    this.settle();
    asked.whenShown?.();
    return true;
  }

  private async follow(): Promise<void> {
    if (this.isFollowing) return;
    this.isFollowing = true;
    while (this.asked && !this.isOver) await this.seekFilm(this.asked);
    this.isFollowing = false;
  }

  private async seekFilm({ frame }: Asked): Promise<void> {
    const { film } = this.parts;
    const isThere = this.filmFrame === frame && !film.isSeeking() && !this.isCovered;
    this.isCovered = false;
    this.seek = new AbortController();
    const isExact = isThere || (await film.seek(frame, this.seek.signal));
    if (this.isOver || this.asked?.frame !== frame) return;
    const { whenShown } = this.asked;
    this.asked = null;
    this.set({ frame: isExact ? frame : this.filmFrame, wanted: frame, isExact, shownBy: "film" });
    this.settling = setTimeout(() => this.settle(), AFTER_SEEK_MS);
    whenShown?.();
  }

  /** The picture stands: pictures round it are held from now on. */
  private settle(): void {
    clearTimeout(this.settling);
    if (this.isOver || this.isPlaying || this.asked) return;
    if (this.window) this.window.aim(this.place.frame);
    else if (this.windowState === "none") void this.openWindow();
  }

  private async openWindow(): Promise<void> {
    this.opening += 1;
    this.windowState = "opening";
    const { opening } = this;
    const onFailed = () => this.refuse(opening);
    const onHeld = (frame: number) => {
      if (this.asked?.frame === frame) this.showHeld();
    };
    try {
      const window = await this.parts.openWindow({ onHeld, onFailed });
      if (opening !== this.opening) return window?.close();
      if (!window) return this.refuse(opening);
      this.window = window;
      this.windowState = "open";
      this.set({});
      if (!this.isPlaying && !this.asked) window.aim(this.place.frame);
    } catch {
      this.refuse(opening);
    }
  }

  /** From here on the film is sought. */
  private refuse(opening: number): void {
    if (opening !== this.opening) return;
    this.window = null;
    this.windowState = "refused";
    this.set({});
  }
}
