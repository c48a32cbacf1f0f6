import { CLIPS_ADDRESS } from "../clips/clips-academy";
import { countHeldFrames, heldFrames } from "../clips/held-frames";
import { type SeenRoom, setHidden, startSeenRoom, stepThrough } from "../clips/seen-room";
import { shownPicture } from "../clips/shown-picture";
import { expect, test } from "./academy";

/** The window of pictures and what a decoder has under way. */
const MOST_HELD = 90;

/** A decoder in hardware has so few pictures that it stands still while they are all held. */
const FEW_HELD = 20;

let room: SeenRoom;

test.use({ baseURL: CLIPS_ADDRESS });
test.beforeAll(async () => {
  room = await startSeenRoom();
});
test.afterAll(() => room?.academy.stop());

test.describe("frames held ready", () => {
  test("are said to be, are bounded, and are let go when the room is left", async ({
    academy: { visitor },
  }) => {
    const page = await visitor();
    await countHeldFrames(page);
    const figure = await room.open(page);
    await expect(figure.getByText("Frames held ready")).toBeVisible();
    await expect.poll(async () => (await heldFrames(page)).now).toBeGreaterThan(30);
    await stepThrough(page, figure, 0, 20);
    expect(await figure.locator("[data-shown]").evaluate((shown) => shown.tagName)).toBe("CANVAS");
    await figure.getByRole("slider", { name: "Frame" }).fill("150");
    await shownPicture(figure, 150);
    expect((await heldFrames(page)).most).toBeLessThanOrEqual(MOST_HELD);
    await page.getByRole("link", { name: "Today" }).first().click();
    await expect(figure).toBeHidden();
    await expect.poll(async () => (await heldFrames(page)).now).toBe(0);
  });

  test("are let go while nobody looks at the page, and held again when somebody does", async ({
    academy: { visitor },
  }) => {
    const page = await visitor();
    await countHeldFrames(page);
    const figure = await room.open(page);
    const held = async () => (await heldFrames(page)).now;
    await expect.poll(held).toBeGreaterThan(30);
    await setHidden(page, true);
    await expect.poll(held).toBe(0);
    await setHidden(page, false);
    await expect.poll(held).toBeGreaterThan(30);
    await stepThrough(page, figure, 0, 3);
  });

  test("are copied off a decoder that works in hardware, so that it never stands still", async ({
    academy: { visitor },
  }) => {
    const page = await visitor();
    await countHeldFrames(page);
    await page.addInitScript(() => {
      const ask = VideoDecoder.isConfigSupported.bind(VideoDecoder);
      VideoDecoder.isConfigSupported = async (config) =>
        config.hardwareAcceleration === "prefer-software" ? { supported: false, config } : ask(config);
    });
    const figure = await room.open(page);
    await expect(figure.getByText("Frames held ready")).toBeVisible();
    await page.waitForTimeout(2000);
    await stepThrough(page, figure, 0, 20);
    expect(await figure.locator("[data-shown]").evaluate((shown) => shown.tagName)).toBe("CANVAS");
    expect((await heldFrames(page)).most).toBeLessThanOrEqual(FEW_HELD);
  });

  for (const [why, harm] of [
    ["has no decoder", "delete globalThis.VideoDecoder"],
    [
      "cannot decode the film",
      "VideoDecoder.isConfigSupported = async (config) => ({ supported: false, config })",
    ],
    [
      "fails while it decodes",
      "globalThis.VideoDecoder = class extends VideoDecoder { decode() { throw new Error('No more.'); } }",
    ],
  ] as const) {
    test(`are sought one by one, and said to be, in a browser that ${why}`, async ({
      academy: { visitor },
    }) => {
      const page = await visitor();
      await page.addInitScript(harm);
      const figure = await room.open(page);
      await stepThrough(page, figure, 0, 3);
      await expect(figure.getByText("Frames sought one by one")).toBeVisible();
      await stepThrough(page, figure, 3, 2);
    });
  }
});
