import { expect, type Locator, type Page } from "@playwright/test";
import { WHO } from "../helpers/who";
import {
  CLIPS_COACH,
  type ClipsAcademy,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "./clips-academy";
import { evenTimesMs, numberedMp4 } from "./numbered-clip";
import { shownPicture } from "./shown-picture";

/** An academy with one numbered clip of three seconds, and the room its coach looks at it in. */
export interface SeenRoom {
  academy: ClipsAcademy;
  open: (page: Page) => Promise<Locator>;
}

/** Starts the academy, sends it the clip and has the coach take it. */
export async function startSeenRoom(): Promise<SeenRoom> {
  const academy = await startClipsAcademy();
  const file = await numberedMp4({ clip: 1, timesMs: evenTimesMs(180, 60), group: 30 });
  const roundId = await sendRound(WHO.child.athleteId, [{ file }]);
  const coach = await signedIn(CLIPS_COACH);
  await command(coach, "rounds.take", { roundId });
  const { cookies } = await coach.storageState();
  await coach.dispose();
  return {
    academy,
    open: async (page) => {
      await page.context().addCookies(cookies);
      await page.goto(`/reviews/${roundId}`);
      const figure = page.getByRole("figure", { name: /clip$/ });
      await expect(figure.getByRole("slider", { name: "Frame" })).toBeEnabled();
      return figure;
    },
  };
}

/** The frame that the player says is on the picture. */
export const frameOf = async (figure: Locator): Promise<number> =>
  Number(await figure.getAttribute("data-frame"));

/** Steps on by key, and holds each picture to the frame that is said. */
export async function stepThrough(page: Page, figure: Locator, from: number, steps: number): Promise<void> {
  for (let frame = from + 1; frame <= from + steps; frame += 1) {
    await page.keyboard.press("ArrowRight");
    expect(await shownPicture(figure, frame)).toMatchObject({ told: frame, read: { frame } });
  }
}

/** Says to the page that nobody looks at it, or that somebody does. */
export async function setHidden(page: Page, isHidden: boolean): Promise<void> {
  await page.evaluate((hidden) => {
    Object.defineProperty(document, "hidden", { value: hidden, configurable: true });
    document.dispatchEvent(new Event("visibilitychange"));
  }, isHidden);
}

/** The picture stands and goes on standing. */
export async function expectStill(page: Page, figure: Locator): Promise<void> {
  await page.waitForTimeout(500);
  const frame = await frameOf(figure);
  await page.waitForTimeout(700);
  expect(await frameOf(figure)).toBe(frame);
}

/** Where the whole picture lies on the screen, with what of it is out of sight. */
export const boxOf = (figure: Locator) =>
  figure.locator("[data-shown]").evaluate((shown) => {
    const { x, y, width, height } = shown.getBoundingClientRect();
    return { x, y, width, height };
  });

/** What is drawn over the picture lies exactly on it, mirrored as it is. */
export async function expectGlued(figure: Locator): Promise<void> {
  const off = await figure.evaluate((of) => {
    const shown = of.querySelector("[data-shown]")?.getBoundingClientRect();
    const overlay = of.querySelector<SVGSVGElement>("svg[data-overlay]");
    const screen = overlay?.getScreenCTM();
    if (!shown || !overlay || !screen) throw new Error("Nothing is drawn over the picture.");
    const isMirrored = screen.a < 0;
    const corner = new DOMPoint(0, 0).matrixTransform(screen);
    const { width, height } = overlay.viewBox.baseVal;
    const opposite = new DOMPoint(width, height).matrixTransform(screen);
    return [
      corner.x - (isMirrored ? shown.right : shown.left),
      corner.y - shown.top,
      opposite.x - (isMirrored ? shown.left : shown.right),
      opposite.y - shown.bottom,
    ];
  });
  for (const each of off) expect(Math.abs(each)).toBeLessThan(0.5);
}
