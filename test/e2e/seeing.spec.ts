import { CLIPS_ADDRESS } from "../clips/clips-academy";
import { boxOf, expectGlued, expectStill, frameOf, type SeenRoom, startSeenRoom } from "../clips/seen-room";
import { shownPicture, shownWhilePlaying } from "../clips/shown-picture";
import { expect, PHONE, test } from "./academy";

let room: SeenRoom;

test.use({ baseURL: CLIPS_ADDRESS });
test.beforeAll(async () => {
  room = await startSeenRoom();
});
test.afterAll(() => room?.academy.stop());

test.describe("going through a clip", () => {
  test("a held key and a held button go on, and stop when they are let go", async ({
    academy: { visitor },
  }) => {
    const page = await visitor();
    const figure = await room.open(page);
    await expect(figure.getByText("Frames held ready")).toBeVisible();
    await page.keyboard.down("ArrowRight");
    for (let repeat = 0; repeat < 8; repeat += 1) {
      await page.waitForTimeout(50);
      await page.keyboard.down("ArrowRight");
    }
    await page.keyboard.up("ArrowRight");
    expect(await frameOf(figure)).toBeGreaterThan(3);
    await expectStill(page, figure);

    const back = figure.getByRole("button", { name: "One frame back" });
    await figure.getByRole("slider", { name: "Frame" }).fill("120");
    await shownPicture(figure, 120);
    await back.hover();
    await page.mouse.down();
    await page.waitForTimeout(1500);
    await page.mouse.up();
    expect(await frameOf(figure)).toBeLessThan(115);
    await expectStill(page, figure);
  });

  test("slower and faster by key, one word each", async ({ academy: { visitor } }) => {
    const page = await visitor();
    const figure = await room.open(page);
    const speed = () => figure.locator("video").evaluate((film) => (film as HTMLVideoElement).playbackRate);
    for (const [key, rate] of [
      ["[", 0.5],
      ["[", 0.25],
      ["[", 0.125],
      ["[", 0.125],
      ["]", 0.25],
    ] as const) {
      await page.keyboard.press(key);
      await expect.poll(speed).toBe(rate);
    }
  });
});

/** Marks of the first and the second moment. */
const [FROM, TO] = [40, 70];

test.describe("playing between two moments", () => {
  test("shows what lies between them lap by lap and nothing beside it, then stands, steps and plays on", async ({
    academy: { visitor },
  }) => {
    const page = await visitor();
    const figure = await room.open(page);
    await expect(figure.getByText("Frames held ready")).toBeVisible();
    for (const [key, frame] of [
      ["1", FROM],
      ["2", TO],
    ] as const) {
      const scale = figure.getByRole("slider", { name: "Frame" });
      await scale.fill(String(frame));
      await scale.blur();
      await shownPicture(figure, frame);
      await page.keyboard.press(key);
    }
    for (const key of ["ArrowLeft", "[", "[", "l"]) await page.keyboard.press(key);
    const stop = figure.getByRole("button", { name: "Stop" });
    await expect(stop).toBeVisible();
    /* By the film until all of it is held, then from what is held. */
    const film = figure.locator("video");
    await expect.poll(() => film.evaluate((of) => (of as HTMLVideoElement).paused)).toBe(true);
    const seen = await shownWhilePlaying(figure, 4);
    await expect(stop).toBeVisible();
    const frames = seen.map(({ read }) => read?.frame);
    expect(seen.filter(({ told, read }) => told !== read?.frame)).toEqual([]);
    expect(Math.min(...frames.map(Number))).toBe(FROM);
    expect(Math.max(...frames.map(Number))).toBe(TO);
    expect(frames.filter((frame, at) => at > 0 && Number(frame) < Number(frames[at - 1]))).toHaveLength(4);

    await page.keyboard.press(" ");
    await expect(figure.getByRole("button", { name: "Play" })).toBeVisible();
    await expectStill(page, figure);
    const stood = await frameOf(figure);
    await page.keyboard.press(stood < TO ? "ArrowRight" : "ArrowLeft");
    const next = stood < TO ? stood + 1 : stood - 1;
    expect(await shownPicture(figure, next)).toMatchObject({ told: next, read: { frame: next } });

    await page.keyboard.press(" ");
    await expect(stop).toBeVisible();
    await page.keyboard.press("l");
    await expect.poll(() => frameOf(figure)).toBeGreaterThan(TO + 5);
    await expect(stop).toBeVisible();
    await page.keyboard.press(" ");
    await expectStill(page, figure);
  });
});

test.describe("looking closer", () => {
  test("wheel, drag, keys and buttons enlarge and shift; what is drawn stays on the picture", async ({
    academy: { visitor },
  }) => {
    const page = await visitor();
    const figure = await room.open(page);
    const whole = await boxOf(figure);
    const [x, y] = [whole.x + whole.width * 0.7, whole.y + whole.height * 0.4];
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, -400);
    await expect.poll(async () => (await boxOf(figure)).width).toBeGreaterThan(whole.width * 1.5);
    const near = await boxOf(figure);
    expect((x - near.x) / near.width).toBeCloseTo(0.7, 2);
    expect((y - near.y) / near.height).toBeCloseTo(0.4, 2);
    await expectGlued(figure);

    await page.mouse.down();
    await page.mouse.move(x + 40, y + 20, { steps: 5 });
    await page.mouse.up();
    const shifted = await boxOf(figure);
    expect(shifted.x - near.x).toBeCloseTo(40, 0);
    expect(shifted.y - near.y).toBeCloseTo(20, 0);
    await expect(figure.getByRole("button", { name: "Play" })).toBeVisible();

    await page.keyboard.press("Alt+ArrowRight");
    await expect.poll(async () => (await boxOf(figure)).x).toBeLessThan(shifted.x - 20);
    await page.keyboard.press("+");
    await page.keyboard.press("m");
    await expectGlued(figure);
    await page.keyboard.press("0");
    await expect.poll(async () => (await boxOf(figure)).width).toBeCloseTo(whole.width, 0);
    await expect(figure.getByRole("button", { name: "Mirror" })).toHaveAttribute("aria-pressed", "true");

    await figure.getByRole("button", { name: "Nearer" }).click();
    await figure.getByRole("button", { name: "Look further right" }).click();
    expect((await boxOf(figure)).width).toBeCloseTo(whole.width * 1.5, 0);
    await figure.getByRole("button", { name: "Farther" }).click();
    expect((await boxOf(figure)).x).toBeCloseTo(whole.x, 0);
  });

  test("a press plays and stops; a wheel that was scrolling the page goes on doing so", async ({
    academy: { visitor },
  }) => {
    const page = await visitor();
    const figure = await room.open(page);
    const whole = await boxOf(figure);
    await page.mouse.click(whole.x + 50, whole.y + 50);
    await expect(figure.getByRole("button", { name: "Stop" })).toBeVisible();
    await page.mouse.click(whole.x + 50, whole.y + 50);
    await expect(figure.getByRole("button", { name: "Play" })).toBeVisible();
    await page.mouse.move(1200, 300);
    await page.mouse.wheel(0, 50);
    await page.mouse.move(whole.x + 50, whole.y + 100);
    await page.mouse.wheel(0, -50);
    await page.waitForTimeout(100);
    expect((await boxOf(figure)).width).toBeCloseTo(whole.width, 0);
  });

  test("two fingers enlarge, one shifts, and a tap plays", async ({ academy: { visitor } }) => {
    const page = await visitor(PHONE);
    const line = await page.context().newCDPSession(page);
    await line.send("Emulation.setTouchEmulationEnabled", { enabled: true, maxTouchPoints: 5 });
    const figure = await room.open(page);
    const whole = await boxOf(figure);
    const at = (x: number, y: number) => ({ x: whole.x + whole.width * x, y: whole.y + whole.height * y });
    const touch = (type: "touchStart" | "touchMove" | "touchEnd", points: { x: number; y: number }[]) =>
      line.send("Input.dispatchTouchEvent", {
        type,
        touchPoints: points.map((each, id) => ({ ...each, id })),
      });
    await touch("touchStart", [at(0.45, 0.5)]);
    await touch("touchStart", [at(0.45, 0.5), at(0.55, 0.5)]);
    for (let part = 1; part <= 10; part += 1) {
      await touch("touchMove", [at(0.45 - part * 0.02, 0.5), at(0.55 + part * 0.02, 0.5)]);
    }
    await touch("touchEnd", []);
    await expect.poll(async () => (await boxOf(figure)).width).toBeGreaterThan(whole.width * 3);
    await expectGlued(figure);
    const near = await boxOf(figure);
    await touch("touchStart", [at(0.5, 0.5)]);
    for (let part = 1; part <= 10; part += 1) await touch("touchMove", [at(0.5 - part * 0.02, 0.5)]);
    await touch("touchEnd", []);
    await expect.poll(async () => (await boxOf(figure)).x).toBeLessThan(near.x - whole.width * 0.15);
    await expect(figure.getByRole("button", { name: "Play" })).toBeVisible();
    await touch("touchStart", [at(0.5, 0.5)]);
    await touch("touchEnd", []);
    await expect(figure.getByRole("button", { name: "Stop" })).toBeVisible();
  });
});
