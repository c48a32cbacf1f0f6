import type { Locator, Page } from "@playwright/test";
import { expect } from "./academy";
import { Keyed } from "./keyed";

/** The moments of a clip by their frames, counted from 0, in the delivery's order; what is approximate is left out. */
export interface Moments {
  first_movement: number;
  peak_knee_height: number;
  front_foot_contact: number;
  ball_release: number;
  finish: number;
}

/** The key of each moment. */
const MOMENT_KEYS: Record<keyof Moments, string> = {
  first_movement: "1",
  peak_knee_height: "2",
  front_foot_contact: "3",
  ball_release: "5",
  finish: "6",
};

/** Six findings of one review, seen from the open side: three corrections and three keeps, each by two letters. */
export const FINDINGS = [
  { kind: "correction", moment: "first_movement", letters: "ga", name: "Gaze level and on the plate" },
  { kind: "keep", moment: "peak_knee_height", letters: "bp", name: "Balanced at peak knee height" },
  { kind: "correction", moment: "peak_knee_height", letters: "hl", name: "Hips lead" },
  { kind: "keep", moment: "front_foot_contact", letters: "sl", name: "Stride length" },
  {
    kind: "correction",
    moment: "ball_release",
    letters: "fk",
    name: "Front knee firms from contact to release",
  },
  { kind: "keep", moment: "finish", letters: "fb", name: "Finish balanced and held" },
] as const;

/** A review as it was written: by which acts, and what it says, one finding a line. */
export interface SixFindings {
  hands: Keyed;
  said: string[];
}

/**
 * Writes a whole review by keys alone in a room that is open, from the moments to its sending. `between` is done when
 * the moments are marked, before anything is said.
 */
export async function writeSixFindings(
  page: Page,
  moments: Moments,
  between?: (hands: Keyed) => Promise<void>,
): Promise<SixFindings> {
  const hands = new Keyed(page);
  await markMoments(page, hands, moments);
  await between?.(hands);
  for (const finding of FINDINGS) {
    await goTo(page, hands.for("moving between moments"), moments[finding.moment]);
    await (finding.kind === "correction" ? correct(page, hands, finding) : keep(page, hands, finding));
  }
  await hands.for("sending").command("Control+Enter");
  const dialog = page.getByRole("alertdialog");
  await expect(dialog).toContainText("Work on 3 corrections");
  for (const { name } of FINDINGS.filter((each) => each.kind === "correction")) {
    await expect(dialog).toContainText(name);
  }
  const said = wordsOf((await dialog.locator("p").last().textContent()) ?? "");
  await hands.command("Control+Enter");
  await expect(page.getByText("The review is with the family.")).toBeVisible();
  return { hands, said };
}

/** The coach's own words in a recap: what stands round them there is the academy's. */
function wordsOf(recap: string): string[] {
  return recap.split("\n").flatMap((line) => {
    const [, keep] = line.match(/^- (.+) \([a-z -]+\)$/) ?? [];
    const [, correction] = line.match(/^\d\. [^(]+\([a-z -]+\): (.+)$/) ?? [];
    const words = keep ?? correction;
    return words === undefined ? [] : [words];
  });
}

/** Goes from the clip's first frame through its moments and marks each, on the figure that the keys drive. */
export async function markMoments(page: Page, hands: Keyed, moments: Moments, figure = figureOf(page)) {
  let at = 0;
  for (const [moment, frame] of Object.entries(moments) as [keyof Moments, number][]) {
    await lookTo(hands, frame - at);
    await onFrame(figure, frame);
    await hands.for("marking the moments").command(MOMENT_KEYS[moment]);
    at = frame;
  }
}

/** Watching: tens of frames, then single ones. */
async function lookTo(hands: Keyed, frames: number) {
  const way = frames < 0 ? "ArrowLeft" : "ArrowRight";
  await hands.look(`Shift+${way}`, Math.floor(Math.abs(frames) / 10));
  await hands.look(way, Math.abs(frames) % 10);
}

/** The clip of a room that has one in hand. */
const figureOf = (page: Page) => page.getByRole("figure", { name: /clip$/ });

/** From one marked moment to the next, by key. */
export async function goTo(page: Page, hands: Keyed, frame: number) {
  const figure = figureOf(page);
  for (let tries = 0; tries < 8; tries += 1) {
    const now = Number(await figure.getAttribute("data-frame"));
    if (now === frame) return;
    await hands.command(now < frame ? "k" : "j");
    await expect(figure).not.toHaveAttribute("data-frame", String(now));
  }
  await onFrame(figure, frame);
}

async function onFrame(figure: Locator, frame: number) {
  await expect(figure).toHaveAttribute("data-frame", String(frame));
}

type Finding = (typeof FINDINGS)[number];

async function correct(page: Page, hands: Keyed, { letters, name }: Finding) {
  hands.for("corrections: checkpoint, cue and drill");
  await hands.command("c");
  await hands.type(letters);
  await expect(page.getByRole("option", { selected: true })).toContainText(name);
  await hands.onward("Enter");
  const editor = page.getByRole("region", { name: new RegExp(`^Correction \\d: ${name}`) });
  await expect(editor.getByRole("textbox").first()).toBeFocused();
  await hands.command("Alt+1");
  await hands.onward("Tab");
  await hands.command("Alt+1");
  await hands.onward("Enter");
  for (const field of await editor.getByRole("textbox").all()) await expect(field).not.toHaveValue("");
}

async function keep(page: Page, hands: Keyed, { letters, name }: Finding) {
  hands.for("keeps: checkpoint and words");
  await hands.command("g");
  await hands.type(letters);
  await expect(page.getByRole("option", { selected: true })).toContainText(name);
  await hands.onward("Enter");
  await hands.onward("Enter");
}
