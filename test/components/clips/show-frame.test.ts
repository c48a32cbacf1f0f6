import { describe, expect, it } from "vitest";
import { showFrame, watchFrames } from "@/components/clips/show-frame";

const TIMES_MS = [0, 40, 80, 120, 160];

type Told = (nowMs: number, picture: { mediaTime: number }) => void;

/** A video that tells of its pictures once each is on the screen, as the standard of that callback has it. */
class TellingVideo extends EventTarget {
  error = null;
  duration = 0.2;
  seeking = false;
  private timeS = 0;
  private handles = 0;
  private readonly asked = new Map<number, Told>();

  get currentTime() {
    return this.timeS;
  }
  set currentTime(timeS: number) {
    this.timeS = timeS;
    queueMicrotask(() => this.present());
  }
  get listening() {
    return this.asked.size;
  }

  requestVideoFrameCallback(told: Told) {
    this.handles += 1;
    this.asked.set(this.handles, told);
    return this.handles;
  }
  cancelVideoFrameCallback(handle: number) {
    this.asked.delete(handle);
  }

  private present() {
    const told = [...this.asked.values()];
    this.asked.clear();
    for (const each of told) each(0, { mediaTime: this.timeS });
  }
}

const video = () => {
  const telling = new TellingVideo();
  return { telling, film: telling as unknown as HTMLVideoElement };
};

describe("a frame that is sought", () => {
  it("is shown when the browser says so, and leaves nobody listening behind", async () => {
    const { telling, film } = video();
    for (const frame of [3, 1, 4, 0]) {
      expect(await showFrame(film, TIMES_MS, frame, new AbortController().signal)).toBe(true);
      expect(telling.currentTime * 1000).toBeGreaterThanOrEqual(TIMES_MS[frame] ?? 0);
      expect(telling.listening).toBe(0);
    }
  });

  it("is given up at once when it is no longer wanted", async () => {
    const { telling, film } = video();
    const trying = new AbortController();
    const shown = showFrame(film, TIMES_MS, 2, trying.signal);
    trying.abort();
    expect(await shown).toBe(false);
    expect(telling.listening).toBe(0);
  });
});

describe("whoever watches the frames", () => {
  it("is told of each until they stop, also from within", async () => {
    const { telling, film } = video();
    const told: number[] = [];
    const stop = watchFrames(film, TIMES_MS, (frame) => {
      told.push(frame);
      if (told.length === 2) stop();
    });
    for (const timeS of [0.05, 0.09, 0.13]) {
      telling.currentTime = timeS;
      await Promise.resolve();
    }
    expect(told).toEqual([1, 2]);
    expect(telling.listening).toBe(0);
  });
});
