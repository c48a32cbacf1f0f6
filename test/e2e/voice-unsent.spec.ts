import { CLIPS_ADDRESS } from "../clips/clips-academy";
import { type SeenRoom, startSeenRoom } from "../clips/seen-room";
import { expect, expectAccessible, LAPTOP, test } from "./academy";
import { openPhase, saved } from "./hands";

const SENDING = "**/rounds/*/voice";
const executablePath = process.env.CHROMIUM_PATH;

/** A microphone that hums, and whose use is allowed. */
test.use({
  baseURL: CLIPS_ADDRESS,
  launchOptions: {
    ...(executablePath ? { executablePath } : {}),
    args: ["--no-sandbox", "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"],
  },
});

let room: SeenRoom;

test.beforeAll(async () => {
  test.setTimeout(120_000);
  room = await startSeenRoom();
});

test.afterAll(() => room?.academy.stop());

test("a note that could not be sent is kept on the device through a reload, and sent by itself once the line is back", async ({
  page,
}) => {
  await page.setViewportSize(LAPTOP);
  const editor = page.getByRole("region", { name: /^Correction 1: / });
  const isOnDevice = () =>
    expect(editor.getByRole("alert")).toHaveText(
      /is kept on this device and is sent once the academy is there/,
    );
  await room.open(page);
  await openPhase(page, "Wind-up");
  await saved(page, () => page.getByRole("button", { name: "Correct: Gaze level and on the plate" }).click());

  await test.step("the line is gone as it is spoken, and still gone when it is sent again", async () => {
    await page.route(SENDING, (route) => route.abort());
    await editor.getByRole("button", { name: /^Speak a note: / }).press("Enter");
    await expect(page.getByRole("timer")).toHaveText("0:59 left");
    await page.keyboard.press("Enter");
    await isOnDevice();
    await editor.getByRole("button", { name: /^Send it again: / }).click();
    await isOnDevice();
    await expectAccessible(page);
  });

  await test.step("the review is not sent without it", async () => {
    await page.getByRole("button", { name: "Send to family" }).click();
    await expect(page.getByText(/^send the spoken note on correction 1 again, or leave it/)).toBeVisible();
  });

  await test.step("it is there after a reload, and heard", async () => {
    await page.reload();
    await openPhase(page, "Wind-up");
    await isOnDevice();
    await editor.getByRole("button", { name: /^Listen to the spoken note: / }).click();
    await expect(editor.getByRole("button", { name: /^Stop the spoken note: / })).toBeVisible();
  });

  await test.step("back on line it goes by itself, and nothing of it stays on the device", async () => {
    await page.unroute(SENDING);
    await saved(page, async () => {
      await page.evaluate(() => window.dispatchEvent(new Event("online")));
    });
    await expect(editor.getByRole("alert")).toHaveCount(0);
    await page.getByRole("button", { name: "Send to family" }).click();
    await expect(page.getByText("Not ready to send")).toBeVisible();
    await expect(page.getByText(/^send the spoken note/)).toHaveCount(0);
    await page.reload();
    await openPhase(page, "Wind-up");
    await expect(editor.getByRole("button", { name: /^Listen to the spoken note: / })).toBeVisible();
    await expect(editor.getByRole("alert")).toHaveCount(0);
    expect(await page.evaluate(countKeptNotes)).toBe(0);
  });
});

function countKeptNotes(): Promise<number> {
  return new Promise((resolve, reject) => {
    const asked = indexedDB.open("slabside-unsent-voice");
    asked.onerror = () => reject(asked.error);
    asked.onsuccess = () => {
      const counted = asked.result.transaction("notes").objectStore("notes").count();
      counted.onsuccess = () => resolve(counted.result);
    };
  });
}
