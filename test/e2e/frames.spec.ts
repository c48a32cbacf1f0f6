import type { Locator, Page } from "@playwright/test";
import { followFrame } from "@/components/clips/frame-table";
import { seededRandom } from "../../seed/seeded-random";
import { type CatalogueClip, CLIP_NAMES, catalogue } from "../clips/catalogue";
import {
  CLIPS_A_ROUND,
  CLIPS_ADDRESS,
  CLIPS_COACH,
  type ClipsAcademy,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import { pictureAskedFor, type Shown, shownPicture } from "../clips/shown-picture";
import { WHO } from "../helpers/who";
import { expect, test } from "./academy";

/** Steps of each kind on each clip; `npm run soak` takes a thousand. */
const STEPS = Number(process.env.FRAME_STEPS ?? 50);

/** How the player may come by its pictures; without the browser's decoder it has to seek, which takes longer. */
const WAYS = [
  { way: "held ready", steps: STEPS },
  { way: "sought one by one", steps: Math.min(STEPS, 10 + STEPS / 10) },
] as const;

/** A clip and the room it is looked at in. */
type Sent = CatalogueClip & { roundId: string; place: number };

/** Filmed from a side of their own, so that they go together; the times of one are whole milliseconds. */
const PAIR = ["VP9 in WebM", "frames stored out of order"];

const sent = new Map<string, Sent>();
let pairRoundId: string;
let academy: ClipsAcademy;
let cookies: Awaited<ReturnType<Awaited<ReturnType<typeof signedIn>>["storageState"]>>["cookies"];

test.use({ baseURL: CLIPS_ADDRESS });

test.beforeAll(async ({ browser }) => {
  test.setTimeout(300_000);
  academy = await startClipsAcademy();
  const page = await browser.newPage({ baseURL: CLIPS_ADDRESS });
  await page.goto("/sign-in");
  const clips = await catalogue(page);
  await page.close();
  const coach = await signedIn(CLIPS_COACH);
  for (let first = 0; first < clips.length; first += CLIPS_A_ROUND) {
    const films = clips.slice(first, first + CLIPS_A_ROUND);
    const roundId = await sendRound(WHO.child.athleteId, films);
    await command(coach, "rounds.take", { roundId });
    for (const [place, film] of films.entries()) sent.set(film.name, { ...film, roundId, place });
  }
  const pair = clips.filter(({ name }) => PAIR.includes(name));
  pairRoundId = await sendRound(
    WHO.child.athleteId,
    pair.map((film) => ({ ...film, view: "front" as const })),
  );
  await command(coach, "rounds.take", { roundId: pairRoundId });
  cookies = (await coach.storageState()).cookies;
  await coach.dispose();
});

test.afterAll(() => academy?.stop());

for (const { way, steps } of WAYS) {
  for (const name of CLIP_NAMES) {
    test(`${name}, ${way}: the very frame that was asked for is on the picture, every time`, async ({
      academy: { visitor },
    }) => {
      test.setTimeout(60_000 + steps * 1000);
      const page = await visitor();
      await page.context().addCookies(cookies);
      if (way === "sought one by one") await page.addInitScript("delete globalThis.VideoDecoder");
      const clip = sent.get(name);
      if (!clip) throw new Error(`${name} was not sent.`);
      const figure = await openClip(page, clip);
      const wrong = [
        ...(await walk(figure, clip, nextDoor(clip, steps), async (frame, before) => {
          await page.keyboard.press(frame > before ? "ArrowRight" : "ArrowLeft");
          return shownPicture(figure, frame);
        })),
        ...(await walk(figure, clip, anywhere(clip, steps), (frame) => pictureAskedFor(figure, frame))),
      ];
      expect(wrong).toEqual([]);
    });
  }
}

test("two clips that go together show the very pair of frames, every time", async ({
  academy: { visitor },
}) => {
  test.setTimeout(60_000 + STEPS * 2000);
  const page = await visitor();
  await page.context().addCookies(cookies);
  await page.goto(`/reviews/${pairRoundId}/compare`);
  const figures = {
    older: page.getByRole("figure", { name: /^Old:/ }),
    newer: page.getByRole("figure", { name: /^New:/ }),
  };
  const [left, right] = [await shownPicture(figures.older, 0), await shownPicture(figures.newer, 0)];
  const clipOf = ({ read }: Shown) => [...sent.values()].find(({ clip }) => clip === read?.clip);
  const [leftClip, rightClip] = [clipOf(left), clipOf(right)];
  if (!leftClip || !rightClip || leftClip === rightClip) throw new Error("Two clips were to be seen.");
  const wrong = [];
  for (const frame of [...anywhere(rightClip, STEPS), ...nextDoor(rightClip, STEPS)]) {
    const together = { leader: 0, follower: 0 };
    const other = followFrame(together, rightClip.timesMs, leftClip.timesMs, frame);
    const shown = [await pictureAskedFor(figures.newer, frame), await shownPicture(figures.older, other)];
    const asked = [
      { told: frame, read: { clip: rightClip.clip, frame } },
      { told: other, read: { clip: leftClip.clip, frame: other } },
    ];
    if (JSON.stringify(shown) !== JSON.stringify(asked)) wrong.push({ asked, shown });
  }
  expect(wrong).toEqual([]);
});

async function openClip(page: Page, clip: Sent): Promise<Locator> {
  await page.goto(`/reviews/${clip.roundId}`);
  const choice = page.getByRole("radiogroup", { name: "Clip" });
  if ((await choice.count()) > 0) await choice.locator("label").nth(clip.place).click();
  const figure = page.getByRole("figure", { name: /clip$/ });
  await expect(figure.getByText(`/ ${clip.timesMs.length}`)).toBeVisible();
  await expect(figure.getByRole("slider", { name: "Frame" })).toBeEnabled();
  /* The arrow keys are the clip's again, no longer those of the choice. */
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  return figure;
}

/** Goes from frame to frame. @returns each step after which something else was on the picture */
async function walk(
  figure: Locator,
  { clip }: Sent,
  frames: readonly number[],
  go: (frame: number, before: number) => Promise<Shown>,
): Promise<{ asked: number; shown: Shown }[]> {
  const wrong: { asked: number; shown: Shown }[] = [];
  let before = frames[0] ?? 0;
  await pictureAskedFor(figure, before);
  for (const frame of frames.slice(1)) {
    const shown = await go(frame, before);
    if (shown.told !== frame || shown.read?.frame !== frame || shown.read.clip !== clip) {
      wrong.push({ asked: frame, shown });
    }
    before = frame;
  }
  return wrong;
}

/** So many steps to the next frame, on to the end and back from there. */
function nextDoor({ timesMs: { length: frameCount } }: CatalogueClip, steps: number): number[] {
  let frame = Math.max(0, frameCount - 1 - Math.floor(steps / 2));
  let direction = 1;
  return Array.from({ length: steps + 1 }, () => {
    const here = frame;
    if (frame + direction < 0 || frame + direction >= frameCount) direction = -direction;
    frame += direction;
    return here;
  });
}

/** So many steps to anywhere else, the same on every run. */
function anywhere({ name, timesMs }: CatalogueClip, steps: number): number[] {
  const random = seededRandom(name);
  const frames = [0];
  while (frames.length <= steps) {
    const frame = random.int(0, timesMs.length - 1);
    if (frame !== frames.at(-1)) frames.push(frame);
  }
  return frames;
}
