import { clampFrame } from "../frame-table";
import type { FrameWindow } from "./frame-window";
import { HeldLoop } from "./held-loop";
import { frameInSpan, isLapOver, type LoopSpan, loopRun } from "./loop-span";
import { FIRST_PLACE, type Place } from "./place";
import type { SteppingParts } from "./stepping-parts";
import { WindowKeeper } from "./window-keeper";

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
 * one seek at a time; those asked for meanwhile are passed over. Plays as well: the film, or a loop that is held whole.
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
  private loop: LoopSpan | null = null;
  private readonly heldLoop: HeldLoop;
  private readonly keeper: WindowKeeper;
  private settling: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly parts: SteppingParts,
    startFrame: number,
  ) {
    const frame = clampFrame(parts.frameTimesMs, startFrame);
    this.asked = { frame, whenShown: undefined };
    this.place = { ...FIRST_PLACE, wanted: frame };
    this.heldLoop = new HeldLoop(parts.frameTimesMs, parts.clock, (due) => this.showOfLoop(due));
    this.keeper = new WindowKeeper({
      open: (events) => parts.openWindow(events),
      onOpen: () => this.windowOpened(),
      onHeld: (held) => this.pictureHeld(held),
      onRefused: () => this.windowGone(),
    });
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
    this.endPlay();
    this.asked = { frame: within, whenShown };
    if (this.showHeld()) return;
    this.set({ wanted: within, isLooping: false });
    if (this.window?.isComing(within)) this.window.aim(within);
    else this.window?.rest();
    if (this.isReady) void this.follow();
  }

  /** Plays on from the frame on the picture, or from another: a loop that is held whole from there, else the film. */
  start(from?: number): void {
    const { film } = this.parts;
    const frame = from ?? this.aim();
    this.heldLoop.end();
    this.asked = null;
    this.isPlaying = true;
    this.isCovered = false;
    this.seek.abort(GONE_ON);
    if (this.playHeld(frame)) return;
    if (from !== undefined || this.filmFrame !== frame || film.isSeeking()) film.moveTo(frame);
    film.play().catch(() => this.filmStopped());
    this.holdLoop();
  }

  /** Plays no more; what is on the picture stays. */
  stop(): void {
    const { isPlaying } = this;
    this.endPlay();
    if (!isPlaying) return;
    this.set({ isLooping: false });
    this.settle();
  }

  /** The film has come to its end, or the browser has stopped it. */
  filmStopped(): void {
    const { film } = this.parts;
    if (!this.isPlaying || this.heldLoop.isRunning() || film.isPlaying()) return;
    if (this.loop && film.hasEnded()) this.start(this.loop.from);
    else this.stop();
  }

  /** Frames that are played over and over from now on; null plays on to the end. */
  loopIn(loop: LoopSpan | null): void {
    const { frame } = this.place;
    this.loop = loop;
    if (this.heldLoop.isRunning()) this.start(loop ? frameInSpan(loop, frame) : frame);
    else if (this.isPlaying && !this.playHeld(frame)) this.holdLoop();
  }

  /** The browser has put a picture of the film on the screen. */
  filmTold(frame: number): void {
    this.filmFrame = frame;
    if (this.heldLoop.isRunning()) return;
    if (this.isPlaying && !this.parts.film.isSeeking()) {
      this.set({ frame, wanted: frame, shownBy: "film", isLooping: false });
      if (this.loop && isLapOver(this.loop, frame, this.parts.frameTimesMs.length))
        this.start(this.loop.from);
    } else if (this.place.shownBy === "film") this.set({ frame, ...(this.asked ? {} : { wanted: frame }) });
  }

  /** Lets go of everything that is held; what is on the picture stays, and what plays goes on by the film. */
  letGo(): void {
    this.keeper.letGo();
    this.windowGone();
  }

  /** Holds pictures again after {@link letGo}. */
  takeUp(): void {
    this.keeper.takeUp();
    if (!this.isReady || this.asked) return;
    if (this.isPlaying) this.holdLoop();
    else this.settle();
  }

  end(): void {
    this.isOver = true;
    clearTimeout(this.settling);
    this.seek.abort(GONE_ON);
    this.heldLoop.end();
    this.letGo();
  }

  private endPlay(): void {
    this.isPlaying = false;
    this.heldLoop.end();
    this.parts.film.pause();
  }

  /** Plays the loop from the pictures that are held. @returns false while they are not all there */
  private playHeld(frame: number): boolean {
    const { loop, window } = this;
    if (!loop || !window?.holds(loopRun(loop))) return false;
    window.holdWhole(loopRun(loop));
    this.heldLoop.start(loop, frame);
    this.parts.film.pause();
    return true;
  }

  private showOfLoop(frame: number): void {
    const held = this.window?.at(frame);
    if (!held) return;
    this.parts.paint(held);
    this.set({ frame, wanted: frame, isExact: true, shownBy: "canvas", isLooping: true });
  }

  /** A loop is held whole while the film plays it; whatever else plays has the machine to itself. */
  private holdLoop(): void {
    if (!this.loop) this.window?.rest();
    else if (this.window) this.window.holdWhole(loopRun(this.loop));
    else this.keeper.want();
  }

  private set(change: Partial<Place>): void {
    if (this.isOver) return;
    const source = this.window ? "decoded" : "film";
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
    this.set({ frame: asked.frame, wanted: asked.frame, isExact: true, shownBy: "canvas", isLooping: false });
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
    else this.keeper.want();
  }

  private windowOpened(): void {
    this.set({});
    if (this.isPlaying) this.holdLoop();
    else if (!this.asked) this.window?.aim(this.place.frame);
  }

  private windowGone(): void {
    this.set({});
    if (this.heldLoop.isRunning()) this.start(this.place.frame);
  }

  private pictureHeld(frame: number): void {
    if (this.asked?.frame === frame) this.showHeld();
    else if (this.isPlaying && !this.heldLoop.isRunning()) this.playHeld(this.place.frame);
  }

  private get window(): FrameWindow | null {
    return this.keeper.now();
  }
}
