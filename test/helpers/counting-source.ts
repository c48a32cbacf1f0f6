import type { FrameSource, HeldFrame } from "@/components/clips/stage/frame-window";

/** A source of pictures that counts what is open, and decodes one picture a turn. */
export class CountingSource implements FrameSource {
  readonly open = new Set<HeldFrame>();
  readonly decoded: number[] = [];
  readonly painted: number[] = [];
  mostOpen = 0;
  isClosed = false;
  /** Frames that it cannot give. */
  readonly lost = new Set<number>();
  /** The frame at which it breaks. */
  breaksAt = Number.NaN;

  constructor(readonly most: number) {}

  async *decode({ from, to }: { from: number; to: number }): AsyncGenerator<HeldFrame> {
    for (let frame = from; frame < to; frame += 1) {
      await new Promise((next) => setImmediate(next));
      if (frame === this.breaksAt) throw new Error("The decoder broke.");
      if (this.lost.has(frame)) continue;
      this.decoded.push(frame);
      const held: HeldFrame = {
        frame,
        paint: () => this.painted.push(frame),
        close: () => this.open.delete(held),
      };
      this.open.add(held);
      this.mostOpen = Math.max(this.mostOpen, this.open.size);
      yield held;
    }
  }

  close(): void {
    this.isClosed = true;
  }
}

/** Lets everything that is under way come to an end. */
export async function quiet(turns = Number.NaN): Promise<void> {
  if (Number.isNaN(turns)) {
    await quiet(400);
    /* Something may have been put off for a moment. */
    await new Promise((next) => setTimeout(next, 100));
    return quiet(400);
  }
  for (let turn = 0; turn < turns; turn += 1) await new Promise((next) => setImmediate(next));
}
