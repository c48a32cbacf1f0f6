import type { Locator, Page } from "@playwright/test";
import { type Random, seededRandom } from "../../seed/seeded-random";
import { SHAPES } from "../clips/catalogue";
import {
  CLIPS_ADDRESS,
  CLIPS_COACH,
  type ClipsAcademy,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import { countHeldFrames, heldFrames } from "../clips/held-frames";
import { numberedMp4 } from "../clips/numbered-clip";
import { memoryGauge, type PageMemory } from "../clips/page-memory";
import { shownPicture } from "../clips/shown-picture";
import { WHO } from "../helpers/who";
import { expect, test } from "./academy";
import { openPhase } from "./hands";

/** Random acts in all; `npm run soak` does twenty thousand. */
const ACTS = Number(process.env.CHAOS_ACTS ?? 300);

/** After so many acts everything is looked at. */
const A_BATCH = Math.min(250, Math.ceil(ACTS / 3));

/** The window of pictures, what a decoder has under way, and a second window that is on its way out. */
const MOST_HELD_FRAMES = 160;

/** What a page may use beyond what it used after the first two batches, when everything has been open once. */
const GROWTH = { heapBytes: 24_000_000, nodes: 3000, listeners: 600 };

const FILMS = ["60 frames a second", "turned 270 degrees at a variable rate", "240 frames a second"];

let academy: ClipsAcademy;
let roundId: string;
let cookies: Awaited<ReturnType<Awaited<ReturnType<typeof signedIn>>["storageState"]>>["cookies"];

test.use({ baseURL: CLIPS_ADDRESS });

test.beforeAll(async () => {
  test.setTimeout(120_000);
  academy = await startClipsAcademy();
  const films = [];
  for (const [clip, name] of FILMS.entries()) {
    const shape = SHAPES[name];
    if (!shape) throw new Error(`There is no clip of ${name}.`);
    films.push({ file: await numberedMp4({ ...shape, clip }) });
  }
  roundId = await sendRound(WHO.child.athleteId, films);
  const coach = await signedIn(CLIPS_COACH);
  await command(coach, "rounds.take", { roundId });
  cookies = (await coach.storageState()).cookies;
  await coach.dispose();
});

test.afterAll(() => academy?.stop());

test("whatever is done to the room, it stays without an error, keeps the draft and its memory, and shows the frame it says", async ({
  academy: { visitor },
}) => {
  test.setTimeout(120_000 + ACTS * 400);
  const page = await visitor();
  await page.context().addCookies(cookies);
  await countHeldFrames(page);
  await page.goto(`/reviews/${roundId}`);
  const room = await beginDraft(page);
  const random = seededRandom("chaos");
  const gauge = await memoryGauge(page);
  const memory: PageMemory[] = [];
  for (let done = 0; done < ACTS; done += A_BATCH) {
    for (let act = 0; act < Math.min(A_BATCH, ACTS - done); act += 1) await actAtRandom(room, random);
    await lookAt(room);
    memory.push(await gauge());
    expect((await heldFrames(page)).most).toBeLessThanOrEqual(MOST_HELD_FRAMES);
  }
  test.info().annotations.push({ type: "memory", description: JSON.stringify(memory.slice(-1)) });
  for (const part of ["heapBytes", "nodes", "listeners"] as const) {
    const settled = Math.max(...memory.slice(0, 2).map((each) => each[part]));
    expect(memory.at(-1)?.[part], `${part}: ${memory.map((each) => each[part])}`).toBeLessThanOrEqual(
      settled + GROWTH[part],
    );
  }
  await chooseClip(page, 0);
  const marked = await marksOf(page);
  await expect(page.getByText(/^Saved/)).toBeVisible();
  await page.reload();
  await expect(room.cue).toHaveValue(room.written);
  expect(await marksOf(page)).toEqual(marked);
});

/** The room in hand, and what was last written into the one cue on the slip. */
interface Room {
  page: Page;
  figure: Locator;
  cue: Locator;
  written: string;
}

async function beginDraft(page: Page): Promise<Room> {
  const figure = page.getByRole("figure", { name: /clip$/ });
  await expect(figure.getByRole("slider", { name: "Frame" })).toBeEnabled();
  await openPhase(page, "Wind-up");
  await page.getByRole("button", { name: "Correct: Gaze level and on the plate" }).click();
  const cue = page.getByLabel("Correction 1: the cue");
  await cue.fill("Eyes on the plate");
  return { page, figure, cue, written: "Eyes on the plate" };
}

/** Keys that drive the clip; those that open or send something are pressed where their journeys are. */
const KEYS = [
  ...["ArrowLeft", "ArrowRight", "ArrowLeft", "ArrowRight", "Shift+ArrowLeft", "Shift+ArrowRight"],
  ...[" ", "j", "k", "1", "2", "3", "4", "5", "6", "+", "-", "0", "m", "l", "[", "]", "z", "Shift+Z"],
  ...["Alt+ArrowLeft", "Alt+ArrowRight", "Alt+ArrowUp", "Alt+ArrowDown", "Home", "End", "Escape"],
];

const ACTIONS: readonly [share: number, act: (room: Room, random: Random) => Promise<unknown>][] = [
  [50, ({ page }, random) => page.keyboard.press(random.pick(KEYS))],
  [16, seek],
  [10, drag],
  [8, wheel],
  [5, press],
  [4, resize],
  [4, write],
  [2, changeClip],
  [1, hold],
];

async function actAtRandom(room: Room, random: Random) {
  /* A list that was opened keeps the rest of the page out of reach until it is closed, as it should. */
  if (await room.page.getByRole("listbox").isVisible()) await room.page.keyboard.press("Escape");
  const [first, ...others] = ACTIONS;
  let left = random.int(0, ACTIONS.reduce((sum, [share]) => sum + share, 0) - 1);
  const chosen = [first, ...others].find((action) => {
    left -= action?.[0] ?? 0;
    return left < 0;
  });
  await chosen?.[1](room, random);
}

const slider = ({ figure }: Room) => figure.getByRole("slider", { name: "Frame" });

async function seek(room: Room, random: Random) {
  const last = Number(await slider(room).getAttribute("max"));
  await slider(room).fill(String(random.int(0, last)));
  await slider(room).blur();
}

async function somewhereOn(room: Room, random: Random): Promise<[number, number]> {
  const box = await room.figure.boundingBox();
  if (!box) throw new Error("The clip is not in sight.");
  return [box.x + random.next() * box.width, box.y + random.next() * box.height * 0.7];
}

async function drag(room: Room, random: Random) {
  const { mouse } = room.page;
  await mouse.move(...(await somewhereOn(room, random)));
  await mouse.down();
  for (let move = random.int(0, 4); move > 0; move -= 1)
    await mouse.move(...(await somewhereOn(room, random)));
  await mouse.up();
}

async function wheel(room: Room, random: Random) {
  const { mouse, keyboard } = room.page;
  await mouse.move(...(await somewhereOn(room, random)));
  const isPinch = random.chance(0.5);
  if (isPinch) await keyboard.down("Control");
  await mouse.wheel(0, random.int(-400, 400));
  if (isPinch) await keyboard.up("Control");
}

/** Any of the clip's own buttons, unless it went meanwhile. */
async function press({ figure }: Room, random: Random) {
  const buttons = await figure.getByRole("button", { disabled: false }).all();
  if (buttons.length === 0) return;
  await random
    .pick(buttons)
    .click({ timeout: 1000 })
    .catch(() => undefined);
}

async function resize({ page }: Room, random: Random) {
  await page.setViewportSize({ width: random.int(360, 1500), height: random.int(560, 1100) });
}

async function write(room: Room, random: Random) {
  room.written = `Eyes on the plate, take ${random.int(1, 9999)}`;
  await room.cue.fill(room.written);
  await room.cue.blur();
}

function changeClip({ page }: Room, random: Random) {
  return chooseClip(page, random.int(0, FILMS.length - 1));
}

function chooseClip(page: Page, place: number) {
  return page.getByRole("radiogroup", { name: "Clip" }).locator("label").nth(place).click();
}

/** A key held down goes on and on. */
async function hold({ page }: Room, random: Random) {
  const key = random.pick(["ArrowLeft", "ArrowRight"]);
  await page.keyboard.down(key);
  for (let again = random.int(1, 30); again > 0; again -= 1) await page.keyboard.down(key);
  await page.keyboard.up(key);
}

/** What was written is there, and a frame asked for now is on the picture. */
async function lookAt(room: Room) {
  await room.page.keyboard.press("Escape");
  await expect(room.cue).toHaveValue(room.written);
  const { figure } = room;
  await expect(slider(room)).toBeEnabled();
  const clip = await room.page
    .getByRole("radiogroup", { name: "Clip" })
    .getByRole("radio")
    .evaluateAll((radios) => radios.findIndex((radio) => (radio as HTMLInputElement).checked));
  for (const frame of [7, 8, 91, 90]) {
    await slider(room).fill(String(frame));
    expect(await shownPicture(figure, frame)).toEqual({ told: frame, read: { clip, frame } });
  }
  await slider(room).blur();
}

/** The marked moments of the clip in hand, as the strip reads them out. */
function marksOf(page: Page): Promise<string[]> {
  const strip = page.getByRole("button", { name: /, frame \d+: show$/ });
  return strip.evaluateAll((buttons) => buttons.map((button) => button.getAttribute("aria-label") ?? ""));
}
