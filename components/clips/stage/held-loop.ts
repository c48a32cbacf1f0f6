import { frameAt, seekTargetMs } from "../frame-table";
import { frameInSpan, type LoopSpan } from "./loop-span";

/** By what held pictures are played. */
export interface LoopClock {
  /** Calls back once, at the next redraw of the screen, with its time. @returns what calls it off */
  atRedraw: (act: (nowMs: number) => void) => () => void;
  /** How fast: 1 as the clip's table of times says, 0.5 half as fast. */
  rate: () => number;
}

/**
 * The frame that is due so long after the beginning of a loop's first frame, whichever lap that is in.
 * @param sinceMs by the clip's own time, 0 or more
 * @example frameInLoop([0, 10, 20, 30], { from: 1, to: 2 }, 45) // 1, since a lap takes 20 ms
 */
export function frameInLoop(timesMs: readonly number[], span: LoopSpan, sinceMs: number): number {
  const frame = frameAt(timesMs, (timesMs[span.from] ?? 0) + (sinceMs % lapMs(timesMs, span)));
  return Math.max(span.from, Math.min(span.to, frame));
}

/** From the beginning of the first frame to the end of the last. */
function lapMs(timesMs: readonly number[], { from, to }: LoopSpan): number {
  return Math.max(1, seekTargetMs(timesMs, to, 1, Number.NaN) - (timesMs[from] ?? 0));
}

/** Shows the frames of a span over and over, each when its time has come, and none beside them. */
export class HeldLoop {
  private callOff: (() => void) | null = null;
  private span: LoopSpan = { from: 0, to: 0 };
  private shown = 0;
  private sinceMs = 0;
  private redrawnMs: number | null = null;

  constructor(
    private readonly timesMs: readonly number[],
    private readonly clock: LoopClock,
    private readonly show: (frame: number) => void,
  ) {}

  isRunning(): boolean {
    return this.callOff !== null;
  }

  /** Goes on from a frame, or from the span's first where that frame lies beside it. */
  start(span: LoopSpan, frame: number): void {
    this.end();
    this.span = span;
    this.shown = frameInSpan(span, frame);
    /* From the middle of the frame: a redraw that comes a little early or late leaves none out. */
    const middleMs = seekTargetMs(this.timesMs, this.shown, 0.5, Number.NaN);
    this.sinceMs = middleMs - (this.timesMs[span.from] ?? 0);
    this.redrawnMs = null;
    this.callOff = this.clock.atRedraw(this.goOn);
    this.show(this.shown);
  }

  end(): void {
    this.callOff?.();
    this.callOff = null;
  }

  private readonly goOn = (nowMs: number): void => {
    const passedMs = Math.max(0, nowMs - (this.redrawnMs ?? nowMs));
    this.redrawnMs = nowMs;
    this.sinceMs = (this.sinceMs + passedMs * this.clock.rate()) % lapMs(this.timesMs, this.span);
    const due = frameInLoop(this.timesMs, this.span, this.sinceMs);
    this.callOff = this.clock.atRedraw(this.goOn);
    if (due === this.shown) return;
    this.shown = due;
    this.show(due);
  };
}
