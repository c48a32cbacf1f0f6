import { readFileSync } from "node:fs";
import { chromium, type Page } from "@playwright/test";
import { EMPTY_CHECK_DRAFT, EMPTY_REVIEW_DRAFT } from "@/server/domain/reviews/draft";
import {
  CLIPS_ADDRESS,
  CLIPS_COACH,
  CLIPS_GUARDIAN,
  type ClipsAcademy,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import { WHO } from "../helpers/who";
import { expect, expectAccessible, LAPTOP, listen, PHONE, test } from "./academy";
import { clipFile, eventFrames } from "./demo-records";
import { openPhase, saved, swipe } from "./hands";

const ATHLETE = WHO.child.athleteId;
const FAULT = { checkpointId: "front-knee-firms", phase: "acceleration", name: "Front knee firms" } as const;
const LEAD = { checkpointId: "hips-lead", phase: "stride", name: "Hips lead" } as const;
const executablePath = process.env.CHROMIUM_PATH;
const ARGS = ["--no-sandbox", "--use-fake-device-for-media-stream"];

/** A microphone that hums, and whose use is allowed. */
test.use({
  baseURL: CLIPS_ADDRESS,
  launchOptions: {
    ...(executablePath ? { executablePath } : {}),
    args: [...ARGS, "--use-fake-ui-for-media-stream"],
  },
});
test.describe.configure({ mode: "serial" });

type Cookies = Awaited<ReturnType<Awaited<ReturnType<typeof signedIn>>["storageState"]>>["cookies"];
let academy: ClipsAcademy;
let roundId = "";
let clipId = "";
const cookies: Record<"coach" | "guardian", Cookies> = { coach: [], guardian: [] };
const frames = { first: {} as Record<string, number>, reply: {} as Record<string, number> };

test.beforeAll(async () => {
  test.setTimeout(180_000);
  frames.first = eventFrames("first");
  frames.reply = eventFrames("reply");
  academy = await startClipsAcademy();
  roundId = await sendRound(ATHLETE, [{ file: readFileSync(clipFile("first")) }]);
  const [coach, guardian] = [await signedIn(CLIPS_COACH), await signedIn(CLIPS_GUARDIAN)];
  await command(coach, "rounds.take", { roundId });
  clipId = await clipOf("first");
  await command(coach, "reviews.saveDraft", { kind: "review", roundId, version: 0, document: written() });
  cookies.coach = (await coach.storageState()).cookies;
  cookies.guardian = (await guardian.storageState()).cookies;
  await coach.dispose();
});

test.afterAll(() => academy?.stop());

/** Two corrections, the later one with a plumb line on its frame, and a keep on no frame. */
function written() {
  const on = (event: string) => ({ clipId, frame: frames.first[event] ?? 0 });
  const correction = ({ checkpointId, phase }: typeof FAULT | typeof LEAD, id: string, event: string) => ({
    ...{ id, checkpointId, phase, ...on(event), cue: `${checkpointId} in words`, drill: "", voiceId: null },
  });
  const plumb = { id: "mark", checkpointId: FAULT.checkpointId, ...on("ball_release"), untilFrame: null };
  return {
    ...EMPTY_REVIEW_DRAFT,
    eventMarks: Object.entries(frames.first)
      .filter(([event]) => event !== "max_external_rotation")
      .map(([event, frame]) => ({ clipId, event, frame })),
    corrections: [correction(LEAD, "c1", "peak_knee_height"), correction(FAULT, "c2", "ball_release")],
    keeps: [
      { id: "k1", checkpointId: null, phase: "follow_through", text: "You stay on your feet.", clipId: null },
    ].map((keep) => ({ ...keep, frame: null, voiceId: null })),
    marks: [{ ...plumb, guide: "plumb", points: [{ x: 320, y: 120 }], text: "" }],
  };
}

async function clipOf(part: "first" | "reply"): Promise<string> {
  const coach = await signedIn(CLIPS_COACH);
  const input = encodeURIComponent(JSON.stringify({ json: { roundId } }));
  const room = (await (await coach.get(`/api/trpc/reviews.room?input=${input}`)).json()).result.data.json;
  await coach.dispose();
  return room.clips.find((clip: { part: string }) => clip.part === part).id;
}

async function open(page: Page, who: keyof typeof cookies, path: string) {
  await page.context().addCookies(cookies[who]);
  await page.goto(path);
}

const figure = (page: Page) => page.locator("figure[data-frame]").first();

test("a coach speaks a note, listens, speaks it anew, and it is there after a reload", async ({ page }) => {
  const noise: string[] = [];
  listen(page, noise);
  await page.setViewportSize(LAPTOP);
  await open(page, "coach", `/reviews/${roundId}`);
  const editor = page.getByRole("region", { name: new RegExp(`^Correction \\d: ${FAULT.name}`) });
  await openPhase(page, "Acceleration");
  await speak(page, editor.getByRole("button", { name: /^Speak a note: / }));
  await editor.getByRole("button", { name: /^Listen to the spoken note: / }).click();
  await expect(editor.getByRole("button", { name: /^Stop the spoken note: / })).toBeVisible();
  await expect(editor.getByRole("button", { name: /^Listen to the spoken note: / })).toBeVisible();
  await expectAccessible(page);
  await speak(page, editor.getByRole("button", { name: /^Speak anew: / }));
  await page.reload();
  await openPhase(page, "Acceleration");
  await expect(editor.getByRole("button", { name: /^Listen to the spoken note: / })).toBeVisible();
  await expect(editor.getByText(/^0:0[12]$/)).toBeVisible();
  expect(noise).toEqual([]);
});

/** Speaks for a second and stops with the same key that began it; what was said is kept and named by the draft. */
async function speak(page: Page, begin: ReturnType<Page["getByRole"]>) {
  const kept = page.waitForResponse((answer) => answer.url().endsWith(`/rounds/${roundId}/voice`));
  await saved(page, async () => {
    await begin.focus();
    await page.keyboard.press("Enter");
    await expect(page.getByRole("timer")).toHaveText("0:59 left");
    await page.keyboard.press("Enter");
    expect((await kept).status()).toBe(201);
  });
}

test("without the microphone one sentence says why, and that the words are enough", async () => {
  const browser = await chromium.launch({ ...(executablePath ? { executablePath } : {}), args: ARGS });
  const context = await browser.newContext({ baseURL: CLIPS_ADDRESS, viewport: PHONE });
  const page = await context.newPage();
  await open(page, "coach", `/reviews/${roundId}`);
  await openPhase(page, "Stride");
  const editor = page.getByRole("region", { name: new RegExp(`^Correction \\d: ${LEAD.name}`) });
  await editor.getByRole("button", { name: /^Speak a note: / }).click();
  await expect(editor.getByText(/The words alone are a complete review\.$/)).toBeVisible();
  await expectAccessible(page);
  await browser.close();
});

test("the family swipes through the review, each correction on its frame with its mark, and hears it", async ({
  browser,
}) => {
  await send();
  const context = await browser.newContext({ viewport: PHONE, hasTouch: true, baseURL: CLIPS_ADDRESS });
  const page = await context.newPage();
  const noise: string[] = [];
  listen(page, noise);
  const answers: number[] = [];
  page.on("response", (answer) => {
    if (answer.url().includes("/api/voice/")) answers.push(answer.status());
  });
  await open(page, "guardian", `/family/${ATHLETE}/rounds/${roundId}`);
  await expectAccessible(page);
  await expectAccessible(page, "dark");
  const shows = (event: string) =>
    expect(figure(page)).toHaveAttribute("data-frame", String(frames.first[event]));
  await shows("peak_knee_height");
  await expect(page.locator("[data-mark]")).toHaveCount(0);

  await swipe(page);
  await shows("ball_release");
  await expect(page.locator("[data-mark=plumb]")).toBeVisible();
  await page.getByRole("button", { name: "The one before" }).click();
  await shows("peak_knee_height");
  await page.getByRole("button", { name: /^1 of 2: / }).focus();
  await page.keyboard.press("ArrowRight");
  await shows("ball_release");

  await page.getByRole("button", { name: /^Listen to the spoken note: / }).click();
  await expect(page.getByRole("button", { name: /^Stop the spoken note: / })).toBeVisible();
  await expect(figure(page)).not.toHaveAttribute("data-frame", String(frames.first.ball_release));
  await expect(page.getByRole("button", { name: /^Listen to the spoken note: / })).toBeVisible();
  await shows("ball_release");
  expect(answers.length).toBeGreaterThan(0);
  expect(answers.filter((status) => status !== 200 && status !== 206)).toEqual([]);
  await context.close();
  expect(noise).toEqual([]);
});

async function send() {
  const coach = await signedIn(CLIPS_COACH);
  const input = encodeURIComponent(JSON.stringify({ json: { roundId } }));
  const room = (await (await coach.get(`/api/trpc/reviews.room?input=${input}`)).json()).result.data.json;
  await command(coach, "reviews.send", { roundId, version: room.reviewDraft.version });
  await coach.dispose();
}

test("a reply is seen beside the old clip, both locked on the moment", async ({ page }) => {
  await reply();
  await page.setViewportSize(PHONE);
  await open(page, "guardian", `/family/${ATHLETE}/rounds/${roundId}`);
  await expect(page.getByRole("button", { name: `New clip: show frame ${at("reply") + 1}` })).toBeVisible();
  await page.getByRole("button", { name: /^Old and new together: / }).click();
  const [older, newer] = [page.locator("figure").first(), page.locator("figure").last()];
  await expect(older).toHaveAttribute("data-frame", String(at("first")));
  await expect(newer).toHaveAttribute("data-frame", String(at("reply")));
  await expectAccessible(page);
  await newer.getByRole("button", { name: "One frame on" }).click();
  await expect(newer).toHaveAttribute("data-frame", String(at("reply") + 1));
  await expect(older).toHaveAttribute("data-frame", String(at("first") + 1));
  await page.getByRole("button", { name: "Back to the review" }).click();
  await expect(figure(page)).toBeVisible();
});

const at = (which: "first" | "reply") => frames[which].peak_knee_height ?? 0;

/** The family sends a new clip, and the coach marks its moments and judges both corrections. */
async function reply() {
  await sendRound(ATHLETE, [{ file: readFileSync(clipFile("reply")) }], roundId);
  const sent = await clipOf("reply");
  const coach = await signedIn(CLIPS_COACH);
  const input = encodeURIComponent(JSON.stringify({ json: { roundId } }));
  const room = (await (await coach.get(`/api/trpc/reviews.room?input=${input}`)).json()).result.data.json;
  const verdicts = room.corrections.map(({ id }: { id: string }) => ({
    ...{ correctionId: id, verdict: "partly", note: "", clipId: null, frame: null },
  }));
  const eventMarks = [{ clipId: sent, event: "peak_knee_height", frame: at("reply") }];
  const document = { ...EMPTY_CHECK_DRAFT, eventMarks, verdicts };
  await command(coach, "reviews.saveDraft", { kind: "check", roundId, version: 0, document });
  await command(coach, "reviews.settle", { roundId, version: 1 });
  await coach.dispose();
}
