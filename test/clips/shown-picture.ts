import type { Locator } from "@playwright/test";
import { COLUMNS, HEIGHT_PX, type Picture, ROWS, readBlocks, WIDTH_PX } from "./frame-pattern";

/** What a player says is on the picture, and what the picture itself says. */
export interface Shown {
  told: number;
  read: Picture | null;
}

/** A picture that is not there after this long will not come. */
const PATIENCE_MS = 8000;

/** Waits until the player says that the frame is on the picture, and reads the picture at that very moment. */
export const shownPicture = (figure: Locator, frame: number): Promise<Shown> => shown(figure, frame, false);

/** Asks for the frame by the player's scale, as a hand that pulls it does, and reads what is shown then. */
export const pictureAskedFor = (figure: Locator, frame: number): Promise<Shown> => shown(figure, frame, true);

async function shown(figure: Locator, frame: number, isAskedFor: boolean): Promise<Shown> {
  const { told, brightness } = await figure.evaluate(sampleWhenTold, {
    ...{ frame, isAskedFor, patienceMs: PATIENCE_MS, widthPx: WIDTH_PX, heightPx: HEIGHT_PX },
    ...{ columns: COLUMNS, rows: ROWS },
  });
  return { told, read: readBlocks(brightness) };
}

interface Asked {
  frame: number;
  isAskedFor: boolean;
  patienceMs: number;
  widthPx: number;
  heightPx: number;
  columns: number;
  rows: number;
}

/** Runs in the page. */
async function sampleWhenTold(figure: Element, asked: Asked) {
  const { frame, isAskedFor, patienceMs, widthPx, heightPx, columns, rows } = asked;
  if (isAskedFor) {
    const scale = figure.querySelector("input[type=range]");
    /* Its own setter: the one on the element is watched by what drew the page. */
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(scale, String(frame));
    scale?.dispatchEvent(new Event("input", { bubbles: true }));
  }
  const startMs = performance.now();
  while (figure.getAttribute("data-frame") !== String(frame) && performance.now() - startMs < patienceMs) {
    await new Promise((next) => requestAnimationFrame(next));
  }
  const picture =
    figure.querySelector<HTMLVideoElement | HTMLCanvasElement>("[data-shown]") ??
    figure.querySelector("video");
  const context = new OffscreenCanvas(widthPx, heightPx).getContext("2d", { willReadFrequently: true });
  if (!picture || !context) throw new Error("There is no picture.");
  context.drawImage(picture, 0, 0, widthPx, heightPx);
  const brightness = Array.from({ length: columns * rows }, (_, block) => {
    const x = Math.round((((block % columns) + 0.5) * widthPx) / columns);
    const y = Math.round(((Math.floor(block / columns) + 0.5) * heightPx) / rows);
    const { data } = context.getImageData(x - 2, y - 2, 4, 4);
    /* Black and white: any of its colours is its brightness. */
    return data.filter((_value, at) => at % 4 === 1).reduce((sum, each) => sum + each, 0) / 16;
  });
  return { told: Number(figure.getAttribute("data-frame")), brightness };
}
