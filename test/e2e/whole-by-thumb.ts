import type { Locator, Page } from "@playwright/test";
import { EVENT_WORDS, PHASE_WORDS } from "../../server/domain/mechanics/delivery";
import type { Place } from "../../server/domain/reviews/draft";
import { FRONT_KNEE, jointAt, onScreen, roomOf } from "../clips/measuring-room";
import { expect, PHONE } from "./academy";
import { swipe } from "./hands";
import { FINDINGS, type Moments } from "./six-findings";
import { figureIn, type Hands, momentsOf, sideOf } from "./whole-review";

/** From where a scale's knob is let go near a frame, single steps are few. */
const MOST_STEPS = 40;

/** What is taller than the screen has room for is tapped near its head. */
const MOST_DOWN_PX = 40;

/** A person with a phone and a thumb; letters come from the phone's own keyboard. */
export const THUMB: Hands = {
  name: "a thumb on a phone",
  context: { viewport: PHONE, hasTouch: true, isMobile: true },

  async press(target) {
    await target.waitFor();
    /* Where a thumb has it: below what stays at the top of a page. */
    await target.evaluate((of) => scrollBy(0, of.getBoundingClientRect().top - innerHeight * 0.7));
    const box = await target.boundingBox();
    if (!box) throw new Error("There is nothing to tap.");
    await target
      .page()
      .touchscreen.tap(box.x + box.width / 2, box.y + Math.min(box.height / 2, MOST_DOWN_PX));
  },

  async review(page, filmed, before) {
    const moments = momentsOf(filmed);
    await mark(page, figureIn(page), moments, "Mark");
    const release = filmed.truth.events.ball_release;
    await tapTo(figureIn(page), release);
    const joints = FRONT_KNEE.map((joint) => jointAt(filmed.truth, release, joint));
    await page.getByRole("button", { name: "Measure", exact: true }).tap();
    await page.getByRole("button", { name: "Front-knee flexion", exact: true }).tap();
    await place(page, "Front-knee flexion", joints);
    await page.getByRole("button", { name: "Show", exact: true }).tap();
    await page.getByRole("button", { name: "Two limbs", exact: true }).tap();
    await place(page, "Two limbs", joints);
    await before(joints);
    await say(page, moments);
    await page.getByRole("button", { name: "Send to family" }).tap();
    await page.getByRole("alertdialog").getByRole("button", { name: "Send the review" }).tap();
    await expect(page.getByText("The review is with the family.")).toBeVisible();
  },

  leaf: (page) => swipe(page),
  leafOn: (page) => swipe(page),

  markReply: (page, filmed) => mark(page, sideOf(page, "New"), momentsOf(filmed), "Mark new"),

  judge: (_page, group, steps) => group.locator("label").nth(steps).tap(),

  async settle(page) {
    await page.getByRole("button", { name: "Settle the round" }).tap();
    await page.getByRole("alertdialog").getByRole("button", { name: "Settle the round" }).tap();
  },
};

async function mark(page: Page, figure: Locator, moments: Moments, act: string): Promise<void> {
  for (const [moment, frame] of Object.entries(moments) as [keyof Moments, number][]) {
    await tapTo(figure, frame);
    await page.getByRole("button", { name: `${act}: ${EVENT_WORDS[moment]} on frame ${frame + 1}` }).tap();
  }
}

/** Taps on the scale of frames near one, and on from there step by step. */
async function tapTo(figure: Locator, frame: number): Promise<void> {
  const scale = figure.getByRole("slider", { name: "Frame" });
  await scale.scrollIntoViewIfNeeded();
  const box = await scale.boundingBox();
  if (!box) throw new Error("The scale is not on the screen.");
  const share = frame / Number(await scale.getAttribute("max"));
  await figure.page().touchscreen.tap(box.x + share * box.width, box.y + box.height / 2);
  const isThere = async () => Number(await scale.inputValue()) === (await frameOf(figure));
  for (let step = 0; step < MOST_STEPS; step += 1) {
    await expect.poll(isThere).toBe(true);
    const at = await frameOf(figure);
    const away = frame - at;
    if (away === 0) return;
    await figure.getByRole("button", { name: away > 0 ? "One frame on" : "One frame back" }).tap();
    await expect(figure).not.toHaveAttribute("data-frame", String(at));
  }
  throw new Error(`Frame ${frame} was not reached in ${MOST_STEPS} steps.`);
}

const frameOf = async (figure: Locator): Promise<number> => Number(await figure.getAttribute("data-frame"));

/** Taps on each place of the picture and puts the points down. */
async function place(page: Page, title: string, places: readonly Place[]): Promise<void> {
  const figure = figureIn(page);
  const bar = page.getByRole("region", { name: title });
  for (const at of places) {
    const { x, y } = await onScreen(figure, at);
    await page.touchscreen.tap(x, y);
  }
  await bar.getByRole("button", { name: "Done" }).tap();
  await expect(bar).toHaveCount(0);
}

/** The six findings, each on its moment's frame and from its phase of the outline. */
async function say(page: Page, moments: Moments): Promise<void> {
  const { checkpoints } = await roomOf({ page, roundId: page.url().split("/").at(-1) ?? "" });
  for (const { kind, name, moment } of FINDINGS) {
    await page
      .getByRole("button", { name: `${EVENT_WORDS[moment]}, frame ${moments[moment] + 1}: show` })
      .tap();
    await expect(figureIn(page)).toHaveAttribute("data-frame", String(moments[moment]));
    const phase = checkpoints.find((each) => each.name === name)?.phase;
    if (!phase) throw new Error(`${name} is not in the academy's library.`);
    const opener = page.getByRole("button", { name: new RegExp(`^${PHASE_WORDS[phase]} `) });
    if ((await opener.getAttribute("aria-expanded")) !== "true") await opener.tap();
    if (kind === "keep") {
      await page.getByRole("button", { name: `Keep: ${name}` }).tap();
      continue;
    }
    await page.getByRole("button", { name: `Correct: ${name}` }).tap();
    const editor = page.getByRole("region", { name: new RegExp(`^Correction \\d: ${name}`) });
    for (const usual of ["Usual cues", "Usual drills"]) {
      await editor.getByRole("group", { name: usual }).getByRole("button").first().tap();
    }
  }
}
