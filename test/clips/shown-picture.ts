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
export const shownPicture = async (figure: Locator, frame: number): Promise<Shown> =>
  one(await shown(figure, { frame, isAskedFor: false }));

/** Asks for the frame by the player's scale, as a hand that pulls it does, and reads what is shown then. */
export const pictureAskedFor = async (figure: Locator, frame: number): Promise<Shown> =>
  one(await shown(figure, { frame, isAskedFor: true }));

/** Reads what is shown at every redraw until the picture has gone back so many times. */
export const shownWhilePlaying = (figure: Locator, laps: number): Promise<Shown[]> =>
  shown(figure, { frame: null, laps, patienceMs: laps * PATIENCE_MS });

function one([first]: Shown[]): Shown {
  if (!first) throw new Error("No picture was read.");
  return first;
}

async function shown(figure: Locator, asked: Partial<Asked>): Promise<Shown[]> {
  const samples = await figure.evaluate(sample, {
    ...{ frame: null, isAskedFor: false, laps: 0, patienceMs: PATIENCE_MS, ...asked },
    ...{ widthPx: WIDTH_PX, heightPx: HEIGHT_PX, columns: COLUMNS, rows: ROWS },
  });
  return samples.map(({ told, brightness }) => ({ told, read: readBlocks(brightness) }));
}

interface Asked {
  /** Waited for before anything is read; null for whatever is shown. */
  frame: number | null;
  isAskedFor: boolean;
  /** Read on until the picture has gone back so often; 0 reads once. */
  laps: number;
  patienceMs: number;
  widthPx: number;
  heightPx: number;
  columns: number;
  rows: number;
}

/** Runs in the page. */
async function sample(figure: Element, asked: Asked) {
  const { frame, isAskedFor, laps, patienceMs, widthPx, heightPx, columns, rows } = asked;
  const redraw = () => new Promise((next) => requestAnimationFrame(next));
  const told = () => Number(figure.getAttribute("data-frame"));
  if (isAskedFor) {
    const scale = figure.querySelector("input[type=range]");
    /* Its own setter: the one on the element is watched by what drew the page. */
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(scale, String(frame));
    scale?.dispatchEvent(new Event("input", { bubbles: true }));
  }
  const startMs = performance.now();
  const isPatient = () => performance.now() - startMs < patienceMs;
  while (frame !== null && told() !== frame && isPatient()) await redraw();
  const context = new OffscreenCanvas(widthPx, heightPx).getContext("2d", { willReadFrequently: true });
  const read = () => {
    const picture =
      figure.querySelector<HTMLVideoElement | HTMLCanvasElement>("[data-shown]") ??
      figure.querySelector("video");
    if (!picture || !context) throw new Error("There is no picture.");
    context.drawImage(picture, 0, 0, widthPx, heightPx);
    return Array.from({ length: columns * rows }, (_, block) => {
      const x = Math.round((((block % columns) + 0.5) * widthPx) / columns);
      const y = Math.round(((Math.floor(block / columns) + 0.5) * heightPx) / rows);
      const { data } = context.getImageData(x - 2, y - 2, 4, 4);
      /* Black and white: any of its colours is its brightness. */
      return data.filter((_value, at) => at % 4 === 1).reduce((sum, each) => sum + each, 0) / 16;
    });
  };
  const samples = [{ told: told(), brightness: read() }];
  for (let done = 0; done < laps && isPatient(); ) {
    await redraw();
    const before = samples.at(-1)?.told ?? 0;
    samples.push({ told: told(), brightness: read() });
    if (told() < before) done += 1;
  }
  return samples;
}
