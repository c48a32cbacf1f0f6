import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Locator, Page } from "@playwright/test";
import { frameArtist } from "@/seed/clips/clip-frames";
import { clipParameters } from "@/seed/clips/clip-parameters";
import { drawClip } from "@/seed/clips/draw-clip";
import { encodeClip } from "@/seed/clips/encode-clip";
import { truthOf } from "@/seed/clips/truth";
import { seededRandom } from "@/seed/seeded-random";
import {
  CLIPS_ADDRESS,
  CLIPS_COACH,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import { evenTimesMs, numberedMp4 } from "../clips/numbered-clip";
import { shownPicture } from "../clips/shown-picture";
import { WHO } from "../helpers/who";
import { inBrowser, NAMED_IN_PAGE } from "./bench-browser";
import { bareSeekMs, ownSeekMs, redrawsUntilNext } from "./in-page";
import { type Figure, median, percentile95 } from "./measure";

/** Steps to a neighbour, there and back, and seeks to anywhere. */
const STEPS = 120;
const SEEKS = 24;

/** Of a screen that is drawn 60 times a second. */
const REDRAW_MS = 16.7;

/** Longer than a window of pictures takes to fill: what is measured is not the filling. */
const QUIET_MS = 1500;

/** Three minutes at 30 frames a second; with their padding 200 MB. */
const LONG = { frames: 5390, fps: 30, paddingBytes: 37_200 };

/** The review room's player in a real browser, on the built academy. */
export async function measurePlayer(folder: string): Promise<Figure[]> {
  const start = async () => (await startClipsAcademy()).stop;
  return inBrowser(start, async (browser) => [
    await measureSteps(browser),
    await measurePhoneSeeks(browser),
    await measureLightSeeks(browser, folder),
    await measureOpening(browser),
  ]);
}

/** A page of the coach's with one film in its room. */
async function openRoom(browser: Browser, file: Uint8Array, before?: (page: Page) => Promise<void>) {
  const roundId = await sendRound(WHO.child.athleteId, [{ file }]);
  const coach = await signedIn(CLIPS_COACH);
  await command(coach, "rounds.take", { roundId });
  const context = await browser.newContext({ storageState: await coach.storageState() });
  await coach.dispose();
  const page = await context.newPage();
  await page.addInitScript(NAMED_IN_PAGE);
  await before?.(page);
  await page.goto(`${CLIPS_ADDRESS}/reviews/${roundId}`);
  const figure = page.getByRole("figure", { name: /clip$/ });
  await figure.locator("input[type=range]:enabled").waitFor({ timeout: 60_000 });
  return { page, figure };
}

async function measureSteps(browser: Browser): Promise<Figure> {
  const timesMs = evenTimesMs(180, 60);
  const { page, figure } = await openRoom(
    browser,
    await numberedMp4({ clip: 0, timesMs, group: 15, scale: 10 }),
  );
  await goTo(figure, 90);
  const redraws: number[] = [];
  for (let step = 0; step < STEPS; step += 1) {
    const key = step % 40 < 20 ? "ArrowRight" : "ArrowLeft";
    if (step % 40 === 0) await page.waitForTimeout(QUIET_MS);
    redraws.push(await figure.evaluate(redrawsUntilNext, key));
  }
  await page.context().close();
  const value = percentile95(redraws);
  return {
    name: "A step to a neighbouring frame that is held ready, 1280 by 960: redraws until it is painted, 95th percentile",
    ...{ value, unit: "redraws", target: 1, ok: value <= 1 },
  };
}

/** As phones film: full high definition, a key frame a second. */
async function measurePhoneSeeks(browser: Browser): Promise<Figure> {
  const parameters = clipParameters({ widthPx: 1920, heightPx: 1080 });
  const truth = truthOf(parameters);
  const artist = frameArtist(parameters);
  const file = await encodeClip(
    { ...truth, frameCount: truth.frames.length, group: truth.fps },
    (frame) => new Uint8Array(artist(frame).data()),
  );
  const { ours, bare } = await seekBoth(browser, file);
  const value = Math.round((ours / bare) * 100) / 100;
  return {
    name: `A seek to any frame of a clip of 1920 by 1080 with a key frame a second: the player (${Math.round(ours)} ms) against a bare video element (${Math.round(bare)} ms)`,
    ...{ value, unit: "times", target: 1.2, ok: value <= 1.2 },
  };
}

/** A seek that takes a bare element less than a redraw of the screen: what the player adds is told, not how many times. */
async function measureLightSeeks(browser: Browser, folder: string): Promise<Figure> {
  const path = join(folder, "drawn.mp4");
  await drawClip(clipParameters({ widthPx: 1280, heightPx: 720 }), path);
  const { ours, bare } = await seekBoth(browser, readFileSync(path));
  const value = Math.round((ours - bare) * 10) / 10;
  return {
    name: `A seek to any frame of a clip of 1280 by 720 with four key frames a second: what the player (${Math.round(ours)} ms) adds to a bare video element (${Math.round(bare)} ms), at most a redraw of the screen`,
    ...{ value, unit: "ms", target: REDRAW_MS, ok: value <= REDRAW_MS },
  };
}

/** The medians of the same seeks by the player and by a bare video element on the same page, in turn. */
async function seekBoth(browser: Browser, file: Uint8Array): Promise<{ ours: number; bare: number }> {
  const { page, figure } = await openRoom(browser, file);
  const times = { ours: [] as number[], bare: [] as number[] };
  const random = seededRandom("seeks");
  for (let seek = 0; seek < SEEKS; seek += 1) {
    const frame = (seek % 2 === 0 ? 10 : 120) + random.int(0, 50);
    await page.waitForTimeout(QUIET_MS);
    times.bare.push(await figure.evaluate(bareSeekMs, (frame + 0.5) / 60));
    await page.waitForTimeout(QUIET_MS);
    times.ours.push(await figure.evaluate(ownSeekMs, frame));
  }
  await page.context().close();
  return { ours: median(times.ours), bare: median(times.bare) };
}

async function measureOpening(browser: Browser): Promise<Figure> {
  const { frames, fps, paddingBytes } = LONG;
  const file = await numberedMp4({ clip: 1, timesMs: evenTimesMs(frames, fps), group: fps, paddingBytes });
  let readBytes = 0;
  const { page, figure } = await openRoom(browser, file, async (fresh) => {
    const line = await fresh.context().newCDPSession(fresh);
    await line.send("Network.enable");
    const films = new Set<string>();
    line.on("Network.requestWillBeSent", ({ requestId, request }) => {
      if (/\/api\/clips\/[^/]+\/video$/.test(request.url)) films.add(requestId);
    });
    line.on("Network.dataReceived", ({ requestId, dataLength }) => {
      if (films.has(requestId)) readBytes += dataLength;
    });
  });
  await goTo(figure, 0);
  const share = (bytes: number) => Math.round((1000 * bytes) / file.byteLength) / 10;
  const value = share(readBytes);
  await page.waitForTimeout(4 * QUIET_MS);
  const later = share(readBytes);
  await page.context().close();
  return {
    name: `A clip of ${Math.round(file.byteLength / 1e6)} MB and 3 minutes: share of it that is read until its first frame is shown (and ${later} % after ${(4 * QUIET_MS) / 1000} s)`,
    ...{ value, unit: "%", target: 10, ok: value <= 10 && later < 50 },
  };
}

/** Asks for a frame and waits until the picture is it. */
async function goTo(figure: Locator, frame: number) {
  const slider = figure.getByRole("slider", { name: "Frame" });
  await slider.fill(String(frame));
  await slider.blur();
  const { read } = await shownPicture(figure, frame);
  if (read?.frame !== frame) throw new Error(`Frame ${frame} was not shown.`);
}
