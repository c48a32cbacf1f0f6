import type { Page } from "@playwright/test";
import { type ClipParameters, clipParameters } from "../../seed/clips/clip-parameters";
import type { ClipTruth } from "../../seed/clips/truth";
import type { Place } from "../../server/domain/reviews/draft";
import {
  CLIPS_ADDRESS,
  CLIPS_COACH,
  type ClipsAcademy,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import type { Turn } from "../clips/frame-pattern";
import {
  FRONT_KNEE,
  flexionOnPicture,
  goTo,
  jointAt,
  onScreen,
  openRoom,
  placeAt,
  standingStraight,
  worth,
  writtenOn,
} from "../clips/measuring-room";
import { turnedClip } from "../clips/turned-clip";
import { WHO } from "../helpers/who";
import { expect, expectAccessible, PHONE, test } from "./academy";
import { markEvents } from "./hands";

const SIDE: ClipParameters = clipParameters({ ageYears: 12, view: "open_side", fps: 30 });
const UPRIGHT: ClipParameters = { ...SIDE, widthPx: 360, heightPx: 640 };

/** A clip stored each way up, and how far its picture is enlarged while it is measured. */
const CLIPS: readonly { turn: Turn; zoomSteps: number; parameters: ClipParameters }[] = [
  { turn: 0, zoomSteps: 0, parameters: SIDE },
  { turn: 90, zoomSteps: 3, parameters: UPRIGHT },
  { turn: 180, zoomSteps: 6, parameters: SIDE },
  { turn: 270, zoomSteps: 0, parameters: UPRIGHT },
];

/** The first of them once more, as if it were filmed from the front, and as it is. */
const FRONT = CLIPS.length;
const SIDE_AGAIN = CLIPS.length + 1;

interface Sent {
  turn: Turn;
  zoomSteps: number;
  parameters: ClipParameters;
  truth: ClipTruth;
}

let academy: ClipsAcademy;
let roundId: string;
let sent: Sent[] = [];
let cookies: Awaited<ReturnType<Awaited<ReturnType<typeof signedIn>>["storageState"]>>["cookies"];

test.use({ baseURL: CLIPS_ADDRESS });

test.beforeAll(async () => {
  test.setTimeout(300_000);
  academy = await startClipsAcademy();
  const films = [];
  for (const { turn, parameters, ...rest } of CLIPS) {
    const { file, truth } = await turnedClip(parameters, turn);
    films.push({ file, view: "open_side" as const });
    sent = [...sent, { turn, parameters, truth, ...rest }];
  }
  const [first] = films;
  if (!first) throw new Error("No clip was drawn.");
  films.push({ ...first, view: "front" as const }, first);
  roundId = await sendRound(WHO.child.athleteId, films);
  const coach = await signedIn(CLIPS_COACH);
  await command(coach, "rounds.take", { roundId });
  ({ cookies } = await coach.storageState());
  await coach.dispose();
});

test.afterAll(() => academy?.stop());

for (const [place, { turn, zoomSteps }] of CLIPS.entries()) {
  test(`a clip turned ${turn} degrees, enlarged ${zoomSteps} times: measured at the true points the values are true`, async ({
    academy: { visitor },
  }) => {
    const clip = sent[place];
    if (!clip) throw new Error("The clip was not sent.");
    const page = await visitor();
    const room = await opened(page, place);
    const { truth, parameters } = clip;
    const contact = truth.events.front_foot_contact;
    await markEvents(page, truth.events);

    await goTo(room, contact);
    await page.keyboard.press("n");
    await page.keyboard.press("1");
    for (const joint of FRONT_KNEE) {
      await placeAt(room, jointAt(truth, contact, joint), zoomSteps);
    }
    await page.keyboard.press("Enter");

    await page.keyboard.press("n");
    await page.keyboard.press("4");
    await expect(page.getByRole("region", { name: "Stride length" })).toContainText("stand straight");
    await goTo(room, 0);
    const standing = [...standingStraight(parameters), jointAt(truth, 0, "backAnkle")];
    for (const at of standing) await placeAt(room, at, zoomSteps);
    await expect(room.figure).toHaveAttribute("data-frame", String(contact));
    await placeAt(room, jointAt(truth, contact, "leadAnkle"), zoomSteps);
    await page.keyboard.press("Enter");

    const written = await writtenOn(room, { measures: 2 });
    expect(written.clip).toMatchObject({ widthPx: parameters.widthPx, heightPx: parameters.heightPx });
    const knee = worth(written, "front_knee_flexion");
    expect(Math.abs(knee - flexionOnPicture(truth, contact))).toBeLessThan(0.1);
    expect(Math.abs(knee - truth.angles.frontKneeFlexionDeg.contact)).toBeLessThan(0.5);
    const stride = worth(written, "stride_length") / 100;
    expect(Math.abs(stride / truth.angles.strideFraction - 1)).toBeLessThan(0.002);
    const { max_external_rotation: _unmarked, ...marked } = truth.events;
    expect(Object.fromEntries(written.eventMarks.map(({ event, frame }) => [event, frame]))).toEqual(marked);
  });
}

test("points are placed by keys alone, nudged, gone back on, undone and done again", async ({
  academy: { visitor },
}) => {
  const page = await visitor();
  const room = await opened(page, FRONT);
  await goTo(room, 50);
  await page.keyboard.press("n");
  await page.keyboard.press("1");
  await expect(page.getByRole("region", { name: "Not measured" })).toContainText(
    "Front-knee flexion is measured from the open side or the closed side, not from the front.",
  );
  await page.keyboard.press("n");
  await page.keyboard.press("6");
  const bar = page.getByRole("region", { name: "Shoulder-line tilt" });
  await expect(bar).toContainText("Place: glove-side shoulder.");
  await page.keyboard.press("Shift+ArrowLeft");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("Enter");
  await expect(bar).toContainText("Then: throwing shoulder.");
  await page.keyboard.press("Backspace");
  await expect(bar).toContainText("Place: glove-side shoulder.");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Enter");
  for (let press = 0; press < 4; press += 1) await page.keyboard.press("Shift+ArrowRight");
  await page.keyboard.press("Enter");
  await expect(bar).toHaveCount(0);

  const middle = { x: SIDE.widthPx / 2, y: SIDE.heightPx / 2 };
  const [measure] = (await writtenOn(room, { measures: 1 })).measures;
  expect(measure).toMatchObject({
    frame: 50,
    points: [
      { frame: 50, x: middle.x - 10, y: middle.y - 1 },
      { frame: 50, x: middle.x + 30, y: middle.y - 1 },
    ],
  });
  await page.keyboard.press("z");
  await writtenOn(room, { measures: 0 });
  await page.keyboard.press("Shift+Z");
  expect((await writtenOn(room, { measures: 1 })).measures).toEqual([measure]);
  await page.getByRole("button", { name: "Go to: Shoulder-line tilt, frame 51" }).click();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Escape");
  await expect
    .poll(async () => (await writtenOn(room, { measures: 1 })).measures[0]?.points[1]?.y)
    .toBe(middle.y);
});

test("each guide fits its points, a pencil draws, a note is written, and all show on their frames alone", async ({
  academy: { visitor },
}) => {
  const page = await visitor();
  const room = await opened(page, FRONT);
  const mark = async (number: number, ...places: Place[]) => {
    await page.keyboard.press("s");
    await page.keyboard.press(String(number));
    for (const at of places) await placeAt(room, at, 0);
  };
  await goTo(room, 40);
  await mark(1, { x: 320, y: 60 });
  await page.keyboard.press("Enter");
  await mark(4, { x: 400, y: 160 }, { x: 430, y: 160 });
  await page.keyboard.press("Enter");
  await mark(7, { x: 200, y: 100 });
  await page.getByLabel("A few words").fill("Chest over the knee");
  await page.keyboard.press("Enter");
  await mark(6, { x: 100, y: 300 }, { x: 160, y: 280 }, { x: 220, y: 300 });
  await page.getByRole("button", { name: "End the line" }).click();
  const from = await onScreen(room.figure, { x: 300, y: 300 });
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let step = 1; step <= 20; step += 1) await page.mouse.move(from.x + step * 4, from.y + step);
  await page.mouse.up();
  await page.keyboard.press("Escape");

  const { marks } = await writtenOn(room, { measures: 1, marks: 5 });
  expect(marks.map((row) => row.guide)).toEqual(["plumb", "ring", "note", "pencil", "pencil"]);
  expect(marks.map((row) => row.frame)).toEqual([40, 40, 40, 40, 40]);
  const drawn = room.figure.locator("[data-mark]");
  await expect(drawn).toHaveCount(5);
  await expectAccessible(page);
  await goTo(room, 42);
  await expect(drawn).toHaveCount(0);
  await page.getByRole("button", { name: "Show to frame 43: Plumb line, frame 41" }).click();
  await expect(drawn).toHaveCount(1);
  await goTo(room, 43);
  await expect(drawn).toHaveCount(0);
});

test("a thumb measures on a phone: taps, a pad that nudges, and the value at once with its error", async ({
  browser,
}) => {
  const context = await browser.newContext({
    ...{ baseURL: CLIPS_ADDRESS, viewport: PHONE, hasTouch: true, isMobile: true },
  });
  const page = await context.newPage();
  const room = await opened(page, SIDE_AGAIN);
  const { truth } = sent[0] ?? {};
  if (!truth) throw new Error("The clip was not sent.");
  const release = truth.events.ball_release;
  await goTo(room, release);
  await page.getByRole("button", { name: "Measure", exact: true }).tap();
  await page.getByRole("button", { name: "Trunk tilt forward" }).tap();
  for (const joint of ["midHip", "midShoulder"] as const) {
    const at = await onScreen(room.figure, jointAt(truth, release, joint));
    await page.touchscreen.tap(at.x, at.y);
  }
  const bar = page.getByRole("region", { name: "Trunk tilt forward" });
  await expect(bar).toContainText(/\d+° toward the plate, error not yet known/);
  await bar.getByRole("button", { name: "Left", exact: true }).tap();
  await expectAccessible(page);
  await bar.getByRole("button", { name: "Done" }).tap();
  await expect(bar).toHaveCount(0);
  const { measures } = await writtenOn(room, { measures: 1 });
  const tilt = measures.find((row) => row.kind === "trunk_tilt_forward");
  const shoulder = jointAt(truth, release, "midShoulder");
  expect(tilt?.points[1]?.x).toBeCloseTo(shoulder.x - 1, 1);
  await context.close();
});

/** The room with the coach signed in, on one of the round's clips. */
async function opened(page: Page, place: number) {
  await page.context().addCookies(cookies);
  return openRoom(page, roundId, place);
}
