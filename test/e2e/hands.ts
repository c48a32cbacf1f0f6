import type { Locator, Page } from "@playwright/test";
import { type Academy, expect, expectAccessible } from "./academy";
import { clipFile, type Family } from "./demo-records";

/** The event frames of a drawn clip, counted from 0, as its sidecar of the truth has them. */
const EVENTS = {
  "First movement": "first_movement",
  "Peak knee height": "peak_knee_height",
  "Front foot contact": "front_foot_contact",
  "Ball release": "ball_release",
  Finish: "finish",
} as const;

/** Does something that changes the draft and waits until that is saved, which takes no button. */
export async function saved(page: Page, change: () => Promise<void>) {
  const save = page.waitForResponse((answer) => answer.url().includes("reviews.saveDraft"));
  await change();
  expect((await save).ok()).toBe(true);
}

/** Sends a drawn phone clip as its guardian: a round of its own, or the reply of one. @returns the round's id */
export async function sendClip(
  page: Page,
  academy: Academy,
  family: Family,
  { which, roundId }: { which: "first" | "reply"; roundId: string | null },
): Promise<string> {
  await page.goto(`/family/${family.athleteId}/send${roundId ? `?round=${roundId}` : ""}`);
  await expectAccessible(page);
  await page.locator("input[type=file]").setInputFiles(clipFile(which));
  await expect(page.getByText("Uploaded, not sent yet")).toBeVisible();
  await setDay(page, "Filmed on", academy.today());
  if (which === "first") await page.getByText("Normal speed", { exact: true }).click();
  else await expect(page.getByText("Filmed at: normal speed, as on this device before.")).toBeVisible();
  await page.getByText("Open side", { exact: true }).click();
  const pitches = page.getByRole("textbox", { name: "Pitches thrown" });
  await pitches.fill("6");
  await pitches.blur();
  await page.getByRole("button", { name: "Send the clip" }).click();
  await expect(page.getByText("The clip is with the coach.")).toBeVisible();
  await expect(page.getByText(/6 pitches were put on .+ throw log/)).toBeVisible();
  const link = await page.getByRole("link", { name: "Open the round" }).getAttribute("href");
  return link?.split("/").at(-1) ?? "";
}

/** Opens a phase of the delivery's outline. */
export async function openPhase(page: Page, phase: string) {
  const button = page.getByRole("button", { name: new RegExp(`^${phase} `) });
  if ((await button.getAttribute("aria-expanded")) !== "true") await button.click();
}

/** Steps to each event's frame and marks it; the player must show the very frame that was asked for. */
export async function markEvents(scope: Page | Locator, events: Record<string, number>) {
  for (const [words, event] of Object.entries(EVENTS)) {
    const frame = events[event] ?? 0;
    await scope.getByRole("slider", { name: "Frame" }).fill(String(frame));
    await expect(scope.getByText(`frame ${frame + 1} /`)).toBeVisible();
    await scope.getByRole("button", { name: `Mark: ${words} on frame ${frame + 1}` }).click();
    await expect(scope.getByRole("button", { name: `${words}, frame ${frame + 1}: show` })).toBeVisible();
  }
}

/** Types into a number field. */
export async function setNumber(scope: Page | Locator, name: string, value: string) {
  const field = scope.getByRole("textbox", { name });
  await field.fill(value);
  await field.blur();
}

/** Types a day, part by part as the field shows it, into a date field. `day` is YYYY-MM-DD. */
export async function setDay(scope: Page | Locator, name: string, day: string) {
  const [year = "", month = "", date = ""] = day.split("-");
  const field = scope.getByRole("group", { name });
  await field.getByRole("spinbutton", { name: /^day/ }).click();
  await field.page().keyboard.type(date + month + year);
}

/** Takes the first time that is offered, looks once more, and agrees. */
export async function takeFirstTime(page: Page, act: "Take it" | "Move here") {
  await page
    .getByRole("button", { name: new RegExp(`^${act}: `) })
    .first()
    .click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: act === "Take it" ? "Book it" : "Move the session" }).click();
  await page.waitForURL(/\/(sessions|calendar)\/ses_/);
}

/** A day as the screens name it: "Wed 25 Nov". `day` is YYYY-MM-DD. */
export function dayInWords(day: string): string {
  const words = new Intl.DateTimeFormat("en-GB", {
    weekday: "short",
    day: "numeric",
    month: "short",
    timeZone: "UTC",
  });
  return words.format(Date.parse(day)).replace(",", "");
}

/** A thumb's swipe to the left over what is beneath the picture. */
export async function swipe(page: Page): Promise<void> {
  const row = page.getByRole("list", { name: "Corrections" }).last();
  await row.scrollIntoViewIfNeeded();
  const box = await row.boundingBox();
  if (!box) throw new Error("There is nothing to swipe.");
  const hand = await page.context().newCDPSession(page);
  const y = Math.round(box.y + 30);
  const from = box.x + box.width * 0.85;
  await hand.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [{ x: from, y }] });
  for (let step = 1; step <= 12; step += 1) {
    const x = from - (step * box.width * 0.7) / 12;
    await hand.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [{ x, y }] });
  }
  await hand.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
}
