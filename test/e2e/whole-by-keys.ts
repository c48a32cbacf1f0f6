import type { Locator, Page } from "@playwright/test";
import type { Place } from "../../server/domain/reviews/draft";
import { FRONT_KNEE, jointAt } from "../clips/measuring-room";
import { expect } from "./academy";
import { Keyed } from "./keyed";
import { goTo, markMoments, writeSixFindings } from "./six-findings";
import { type Filmed, figureIn, type Hands, momentsOf, sideOf } from "./whole-review";

/** More than there is to tab through on any page. */
const MOST_TABS = 150;

/** A person with nothing but a keyboard. */
export const KEYS: Hands = {
  name: "the keyboard alone",
  context: {},

  async press(target) {
    await tabTo(target);
    await target.page().keyboard.press("Enter");
  },

  async review(page, filmed, before) {
    await writeSixFindings(page, momentsOf(filmed), async (hands) => {
      const release = filmed.truth.events.ball_release;
      await goTo(page, hands, release);
      await lookCloser(page);
      const joints = FRONT_KNEE.map((joint) => rounded(jointAt(filmed.truth, release, joint)));
      await page.keyboard.press("n");
      await page.keyboard.press("1");
      await place(page, filmed, joints);
      await page.keyboard.press("s");
      await page.keyboard.press("5");
      await place(page, filmed, joints);
      await before(joints);
    });
  },

  async leaf(page) {
    await tabTo(page.getByRole("button", { name: /^1 of 3: / }));
    await page.keyboard.press("ArrowRight");
  },
  leafOn: (page) => page.keyboard.press("ArrowRight"),

  markReply: (page, filmed) => markMoments(page, new Keyed(page), momentsOf(filmed), sideOf(page, "New")),

  async judge(page, group, steps) {
    await tabInto(group);
    for (let step = 0; step < steps; step += 1) await page.keyboard.press("ArrowRight");
    if (steps === 0) await page.keyboard.press("Space");
  },

  async settle(page) {
    await page.keyboard.press("Control+Enter");
    await expect(page.getByRole("alertdialog")).toBeVisible();
    await page.keyboard.press("Control+Enter");
  },
};

/** Tabs on until it is what the keys go to. */
async function tabTo(target: Locator): Promise<void> {
  await tabUntil(target, (element) => element === document.activeElement);
}

/** Tabs on until something in it is what the keys go to. */
async function tabInto(target: Locator): Promise<void> {
  await tabUntil(target, (element) => element.contains(document.activeElement));
}

async function tabUntil(target: Locator, isThere: (element: Element) => boolean): Promise<void> {
  await expect(target).toBeVisible();
  for (let tab = 0; tab < MOST_TABS; tab += 1) {
    if (await target.evaluate(isThere)) return;
    await target.page().keyboard.press("Tab");
  }
  throw new Error(`${target} is not reached by ${MOST_TABS} tabs.`);
}

/** Nearer and back, slower and back, over and over round the frame, which is on the picture again afterwards. */
async function lookCloser(page: Page): Promise<void> {
  const figure = figureIn(page);
  const frame = Number(await figure.getAttribute("data-frame"));
  for (const key of ["+", "Alt+ArrowLeft", "[", "l"]) await page.keyboard.press(key);
  await expect(figure.getByRole("button", { name: "Stop", exact: true })).toBeVisible();
  await expect(figure).not.toHaveAttribute("data-frame", String(frame));
  for (const key of ["Space", "l", "]", "0"]) await page.keyboard.press(key);
  await expect(figure.getByRole("button", { name: "Play", exact: true })).toBeVisible();
  await goTo(page, new Keyed(page), frame);
}

/** Brings the cross to each place by arrow keys and takes the point; it begins in the middle of the picture. */
async function place(page: Page, { parameters }: Filmed, places: readonly Place[]): Promise<void> {
  let at: Place = { x: parameters.widthPx / 2, y: parameters.heightPx / 2 };
  for (const to of places) {
    await page.keyboard.press("Enter");
    await move(page, to.x - at.x, ["ArrowLeft", "ArrowRight"]);
    await move(page, to.y - at.y, ["ArrowUp", "ArrowDown"]);
    await page.keyboard.press("Enter");
    at = to;
  }
}

async function move(page: Page, by: number, [back, on]: readonly [string, string]): Promise<void> {
  const key = by < 0 ? back : on;
  for (let ten = 0; ten < Math.floor(Math.abs(by) / 10); ten += 1) await page.keyboard.press(`Shift+${key}`);
  for (let one = 0; one < Math.abs(by) % 10; one += 1) await page.keyboard.press(key);
}

const rounded = ({ x, y }: Place): Place => ({ x: Math.round(x), y: Math.round(y) });
