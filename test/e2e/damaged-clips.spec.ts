import { existsSync, readdirSync, renameSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "@playwright/test";
import {
  CLIPS_ADDRESS,
  CLIPS_COACH,
  CLIPS_GUARDIAN,
  CLIPS_PASSWORD,
  type ClipsAcademy,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import { evenTimesMs, numberedMp4 } from "../clips/numbered-clip";
import { pictureAskedFor, shownPicture } from "../clips/shown-picture";
import { WHO } from "../helpers/who";
import { expect, signIn, test } from "./academy";

/** A player that shows neither a picture nor words after this long leaves its viewer waiting without end. */
const PATIENCE_MS = 20_000;

const PLAIN = { clip: 1, timesMs: evenTimesMs(120, 60), group: 30 };

let academy: ClipsAcademy;

test.use({ baseURL: CLIPS_ADDRESS });
test.beforeAll(async () => {
  academy = await startClipsAcademy();
});
test.afterAll(() => academy?.stop());

test.describe("sending", () => {
  test("a file that was cut off is refused in words, and nothing of it is kept", async ({
    academy: { visitor },
  }) => {
    const page = await openSending(await visitor());
    const whole = await numberedMp4(PLAIN);
    await choose(page, keep("cut.mp4", whole.subarray(0, Math.floor(whole.byteLength * 0.7))));
    await expect(page.getByText(/The file stops in the middle.+Nothing was kept/)).toBeVisible();
    expect(films()).toEqual([]);
  });

  test("an upload that broke off half way says so, is remembered, and goes on where it stopped", async ({
    academy: { visitor },
  }) => {
    test.setTimeout(120_000);
    const page = await openSending(await visitor());
    const path = keep("half.mp4", await numberedMp4({ ...PLAIN, paddingBytes: 80_000 }));
    let pieces = 0;
    await page.route("**/api/uploads/*", (route) => {
      if (route.request().method() === "PATCH") pieces += 1;
      return pieces > 1 ? route.abort("internetdisconnected") : route.continue();
    });
    await choose(page, path);
    await expect(page.getByText(/connection|again/i).first()).toBeVisible();
    await page.unroute("**/api/uploads/*");
    await page.goto("about:blank");
    await page.goto(`/family/${WHO.child.athleteId}/send`);
    await expect(page.getByText("Half sent")).toBeVisible();
    let sentAgain = 0;
    page.on("request", (request) => {
      if (request.method() === "PATCH") sentAgain += 1;
    });
    await choose(page, path);
    await expect(page.getByText("Uploaded, not sent yet")).toBeVisible();
    expect(sentAgain).toBe(1);
    await expect(page.getByText("Half sent")).toBeHidden();
  });
});

test.describe("watching", () => {
  test("a film whose pictures are destroyed is said to be so in place of the picture", async ({
    academy: { visitor },
  }) => {
    const figure = await watch(await visitor(), { ...PLAIN, damagedFrom: 0 });
    await expect(figure.getByText("The film is damaged")).toBeVisible({ timeout: PATIENCE_MS });
    await expect(figure.getByText("Loading the film…")).toBeHidden();
  });

  test("a film that is destroyed from its middle on is exact up to there, and never waits beyond", async ({
    academy: { visitor },
  }) => {
    test.setTimeout(120_000);
    const figure = await watch(await visitor(), { ...PLAIN, damagedFrom: 70 });
    const slider = figure.getByRole("slider", { name: "Frame" });
    await expect(slider).toBeEnabled();
    for (const frame of [3, 59, 30]) {
      await slider.fill(String(frame));
      expect(await shownPicture(figure, frame)).toEqual({ told: frame, read: { clip: 1, frame } });
    }
    await slider.fill("100");
    await expect(figure.getByText("The film is damaged")).toBeVisible({ timeout: PATIENCE_MS });
    await figure.getByRole("button", { name: "Back to its start" }).click();
    await expect(slider).toBeEnabled();
    expect(await pictureAskedFor(figure, 31)).toEqual({ told: 31, read: { clip: 1, frame: 31 } });
  });

  test("a film that is gone from the disk is said not to have come through, and comes when it is back", async ({
    academy: { visitor },
  }) => {
    test.setTimeout(120_000);
    const page = await visitor();
    const { roundId, path } = await filmWith(PLAIN);
    renameSync(path, `${path}.away`);
    const figure = await openRoom(page, roundId);
    await expect(figure.getByText("The film did not come through")).toBeVisible({ timeout: PATIENCE_MS });
    renameSync(`${path}.away`, path);
    await figure.getByRole("button", { name: "Try again" }).click();
    await expect(figure.getByRole("slider", { name: "Frame" })).toBeEnabled();
  });

  test("a film that was cut on the disk is exact up to there, and never waits beyond", async ({
    browser,
  }) => {
    test.setTimeout(120_000);
    /* Chromium tells its console of every try; that is no error of the page's. */
    const page = await browser.newPage();
    const { roundId, path } = await filmWith({ ...PLAIN, paddingBytes: 20_000 });
    truncateSync(path, 1_200_000);
    const figure = await openRoom(page, roundId);
    await expectClear(figure);
    expect(await pictureAskedFor(figure, 9)).toEqual({ told: 9, read: { clip: 1, frame: 9 } });
    await figure.getByRole("slider", { name: "Frame" }).fill("110", { force: true });
    await page.waitForTimeout(1000);
    await expectClear(figure);
    await page.close();
  });

  test("a line that brings nothing is said to be slow, with a way to try again", async ({
    academy: { visitor },
  }) => {
    test.setTimeout(120_000);
    const page = await visitor();
    const roundId = await roundWith(PLAIN);
    let isSilent = true;
    await page.route("**/api/clips/*/video", (route) =>
      isSilent ? new Promise<void>(() => undefined) : route.continue(),
    );
    const figure = await openRoom(page, roundId);
    await expect(figure.getByText("The film is slow to come")).toBeVisible({ timeout: PATIENCE_MS });
    isSilent = false;
    await figure.getByRole("button", { name: "Try again" }).click();
    await expect(figure.getByRole("slider", { name: "Frame" })).toBeEnabled();
  });
});

async function openSending(page: Page): Promise<Page> {
  await signIn(page, CLIPS_GUARDIAN, CLIPS_PASSWORD);
  await page.goto(`/family/${WHO.child.athleteId}/send`);
  return page;
}

function keep(name: string, bytes: Uint8Array): string {
  const path = join(academy.folder, name);
  writeFileSync(path, bytes);
  return path;
}

function choose(page: Page, path: string) {
  return page.locator("input[type=file]").setInputFiles(path);
}

/** The films on the academy's disk. */
function films(): string[] {
  const folder = join(academy.folder, "data/clips");
  if (!existsSync(folder)) return [];
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" });
  return names.filter((name) => name.endsWith("/copy")).map((name) => join(folder, name));
}

async function roundWith(shape: Parameters<typeof numberedMp4>[0]): Promise<string> {
  const coach = await signedIn(CLIPS_COACH);
  const roundId = await sendRound(WHO.teen.athleteId, [{ file: await numberedMp4(shape) }]);
  await command(coach, "rounds.take", { roundId });
  await coach.dispose();
  return roundId;
}

/** A round with one clip, and where the clip lies on the disk. */
async function filmWith(shape: Parameters<typeof numberedMp4>[0]) {
  const before = films();
  const roundId = await roundWith(shape);
  return { roundId, path: films().find((path) => !before.includes(path)) ?? "" };
}

async function openRoom(page: Page, roundId: string): Promise<Locator> {
  await signIn(page, CLIPS_COACH, CLIPS_PASSWORD);
  await page.goto(`/reviews/${roundId}`);
  return page.getByRole("figure", { name: /clip$/ });
}

async function watch(page: Page, shape: Parameters<typeof numberedMp4>[0]): Promise<Locator> {
  return openRoom(page, await roundWith(shape));
}

/** There is a picture to step through, or there are words for why not; nothing is loading any more. */
async function expectClear(figure: Locator) {
  const ready = figure.locator("input[type=range]:enabled");
  await expect(ready.or(figure.getByRole("status")).first()).toBeVisible({ timeout: PATIENCE_MS });
  await expect(figure.getByText("Loading the film…")).toBeHidden();
}
