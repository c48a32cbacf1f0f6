import { type FrameRun, nextRun, windowSpan } from "./window-plan";

/** A decoded picture that is held until it is closed. */
export interface HeldFrame {
  frame: number;
  /** Draws it over the whole of a canvas. */
  paint: (context: CanvasRenderingContext2D) => void;
  close: () => void;
}

/** Where decoded pictures come from. */
export interface FrameSource {
  /** The most that may be held of it. */
  most: number;
  /** The frames of a run, in order; it may give others near it as well. Ends its work when it is not asked on. */
  decode: (run: FrameRun) => AsyncIterable<HeldFrame>;
  close: () => void;
}

/** What a {@link FrameWindow} tells of. */
export interface FrameWindowEvents {
  /** A picture is held from now on. */
  onHeld: (frame: number) => void;
  /** The source cannot be relied on: it gave an error, or not the frames that it was asked for. All has been let go. */
  onFailed: () => void;
}

/** A source that gave none of the frames it was asked for. */
class MissingFrames extends Error {}

/** The decoded pictures round the one that is looked at, filled ahead in the background, never more than the source allows. */
export class FrameWindow {
  private readonly held = new Map<number, HeldFrame>();
  private playhead = 0;
  private direction: -1 | 1 = 1;
  private isResting = true;
  private isFilling = false;
  private isClosed = false;
  private run: FrameRun | null = null;
  private whole: FrameRun | null = null;

  constructor(
    private readonly source: FrameSource,
    private readonly count: number,
    private readonly events: FrameWindowEvents,
  ) {}

  at(frame: number): HeldFrame | undefined {
    return this.held.get(frame);
  }

  /** Whether every frame of a run is held. */
  holds({ from, to }: FrameRun): boolean {
    for (let frame = from; frame < to; frame += 1) if (!this.held.has(frame)) return false;
    return true;
  }

  /** Whether the frame is among those that are being decoded now. */
  isComing(frame: number): boolean {
    return this.run !== null && !this.isResting && frame >= this.run.from && frame < this.run.to;
  }

  /** Fills round a frame from now on. */
  aim(frame: number): void {
    if (frame !== this.playhead) this.direction = frame > this.playhead ? 1 : -1;
    this.playhead = frame;
    this.whole = null;
    this.isResting = false;
    void this.fill();
  }

  /** Holds a run from now on, and not what lies round the picture, until the next aim; rests where that is too much. */
  holdWhole(run: FrameRun): void {
    this.whole = run;
    this.isResting = run.to - run.from > this.source.most;
    void this.fill();
  }

  /** Leaves the machine to somebody else until the next aim; what is held stays. */
  rest(): void {
    this.isResting = true;
  }

  close(): void {
    if (this.isClosed) return;
    this.isClosed = true;
    for (const held of this.held.values()) held.close();
    this.held.clear();
    this.source.close();
  }

  private state() {
    const { playhead, direction, count, whole } = this;
    const isHeld = (frame: number) => this.held.has(frame);
    return { playhead, direction, count, whole, most: this.source.most, isHeld };
  }

  private next(): FrameRun | null {
    return this.isResting || this.isClosed ? null : nextRun(this.state());
  }

  private async fill(): Promise<void> {
    if (this.isFilling) return;
    this.isFilling = true;
    try {
      for (this.run = this.next(); this.run; this.run = this.next()) await this.take(this.run);
    } catch {
      if (!this.isClosed) {
        this.close();
        this.events.onFailed();
      }
    } finally {
      this.run = null;
      this.isFilling = false;
    }
  }

  private async take(run: FrameRun): Promise<void> {
    let taken = 0;
    for await (const held of this.source.decode(run)) {
      const isOf = held.frame >= run.from && held.frame < run.to;
      if (isOf && this.isWanted(run, held.frame)) {
        this.keep(held);
        taken += 1;
        run.from = held.frame + 1;
      } else {
        held.close();
        if (isOf || this.isResting || this.isClosed) return;
      }
    }
    if (taken === 0) throw new MissingFrames();
  }

  /** A run is given up when the picture has gone elsewhere. */
  private isWanted(run: FrameRun, frame: number): boolean {
    if (this.isResting || this.isClosed) return false;
    const span = windowSpan(this.state());
    const isNear = frame < span.to && run.to > span.from;
    const bringsPlayhead = this.playhead >= frame && this.playhead < run.to;
    return isNear && (this.whole !== null || bringsPlayhead || this.held.has(this.playhead));
  }

  private keep(held: HeldFrame): void {
    this.held.get(held.frame)?.close();
    this.held.set(held.frame, held);
    if (this.held.size > this.source.most) this.dropFarthest();
    this.events.onHeld(held.frame);
  }

  private dropFarthest(): void {
    const { from, to } = windowSpan(this.state());
    const outside = (frame: number) => Math.max(from - frame, frame - to + 1);
    const farthest = [...this.held.keys()].reduce((far, frame) =>
      outside(frame) > outside(far) ? frame : far,
    );
    this.held.get(farthest)?.close();
    this.held.delete(farthest);
  }
}
