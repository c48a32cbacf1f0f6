import type { LoopClock } from "@/components/clips/stage/held-loop";

/** Redraws that come when they are told to. */
export class HandClock implements LoopClock {
  speed = 1;
  nowMs = 1000;
  private readonly waiting = new Set<(nowMs: number) => void>();

  atRedraw(act: (nowMs: number) => void): () => void {
    this.waiting.add(act);
    return () => this.waiting.delete(act);
  }

  rate(): number {
    return this.speed;
  }

  /** Whether anything waits for a redraw. */
  isAwaited(): boolean {
    return this.waiting.size > 0;
  }

  /** Redraws so many times, so long after each other. */
  redraw(times: number, everyMs: number): void {
    for (let time = 0; time < times; time += 1) {
      this.nowMs += everyMs;
      const due = [...this.waiting];
      this.waiting.clear();
      for (const act of due) act(this.nowMs);
    }
  }
}
