import type { Page } from "@playwright/test";

/** Pictures that a page holds open at the moment, and the most it has held at any. */
export interface HeldFrames {
  now: number;
  most: number;
}

declare global {
  var framesHeldOpen: HeldFrames;
}

/** Counts from here on, in every page that is opened, the decoded pictures that are taken and those let go. */
export async function countHeldFrames(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const held = { now: 0, most: 0 };
    globalThis.framesHeldOpen = held;
    const take = () => {
      held.now += 1;
      held.most = Math.max(held.most, held.now);
    };
    globalThis.VideoDecoder = class extends VideoDecoder {
      constructor(init: VideoDecoderInit) {
        super({
          ...init,
          output: (frame) => {
            take();
            init.output(frame);
          },
        });
      }
    };
    const frames = VideoFrame.prototype;
    const { clone, close } = frames;
    frames.clone = function cloned() {
      take();
      return clone.call(this);
    };
    frames.close = function closed() {
      /* One that is closed already has no size. */
      if (this.codedWidth > 0) held.now -= 1;
      close.call(this);
    };
  });
}

/** What the page holds now. */
export const heldFrames = (page: Page): Promise<HeldFrames> => page.evaluate(() => globalThis.framesHeldOpen);
