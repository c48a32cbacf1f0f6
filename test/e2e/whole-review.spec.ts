import type { Page } from "@playwright/test";
import { type ClipParameters, clipParameters } from "../../seed/clips/clip-parameters";
import {
  CLIPS_ADDRESS,
  CLIPS_COACH,
  CLIPS_GUARDIAN,
  type ClipsAcademy,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import type { Turn } from "../clips/frame-pattern";
import { flexionOf, worth, writtenOn } from "../clips/measuring-room";
import { unevenTimesMs } from "../clips/numbered-clip";
import { turnedClip } from "../clips/turned-clip";
import { WHO } from "../helpers/who";
import { expect, expectAccessible, listen, test } from "./academy";
import { KEYS } from "./whole-by-keys";
import { THUMB } from "./whole-by-thumb";
import { type Filmed, figureIn, type Hands, momentsOf, sideOf } from "./whole-review";

const SIDE = clipParameters({ ageYears: 12, view: "open_side", fps: 30 });
const UPRIGHT: ClipParameters = { ...SIDE, widthPx: 360, heightPx: 640 };

interface Film {
  parameters: ClipParameters;
  turn: Turn;
  timesOf?: typeof unevenTimesMs;
}

/** A drawn clip, and one as a phone's camera stores it. */
const FILMS: Readonly<Record<string, Film>> = {
  "a drawn clip": { parameters: SIDE, turn: 0 },
  "a camera's file, turned and of a variable rate": { parameters: UPRIGHT, turn: 90, timesOf: unevenTimesMs },
};

/** What is said of the three corrections of the check, by the steps from the first answer. */
const VERDICTS = [
  { steps: 2, word: "Yes" },
  { steps: 1, word: "Partly" },
  { steps: 0, word: "Not yet" },
] as const;

let academy: ClipsAcademy;
const sent = new Map<string, { first: Filmed; reply: Filmed }>();

test.use({ baseURL: CLIPS_ADDRESS });

test.beforeAll(async () => {
  test.setTimeout(300_000);
  for (const [name, { parameters, turn, timesOf }] of Object.entries(FILMS)) {
    const film = async (own: ClipParameters) => ({
      ...(await turnedClip(own, turn, timesOf)),
      parameters: own,
    });
    sent.set(name, { first: await film(parameters), reply: await film({ ...parameters, kit: 3 }) });
  }
});

/* Each writes its six findings for an athlete of whom nothing is open. */
test.beforeEach(async () => {
  academy = await startClipsAcademy();
});
test.afterEach(() => academy?.stop());

for (const hands of [KEYS, THUMB]) {
  for (const name of Object.keys(FILMS)) {
    test(`${name}: a review, its reading and its check by ${hands.name}`, async ({ browser }) => {
      test.setTimeout(300_000);
      const films = sent.get(name);
      if (!films) throw new Error("The clip was not drawn.");
      const noise: string[] = [];
      const roundId = await sendRound(WHO.child.athleteId, [films.first]);
      const pageOf = async (email: string) => {
        const person = await signedIn(email);
        const context = await browser.newContext({
          ...{ baseURL: CLIPS_ADDRESS, storageState: await person.storageState() },
          ...hands.context,
        });
        await person.dispose();
        const page = await context.newPage();
        listen(page, noise);
        return page;
      };
      const coach = await pageOf(CLIPS_COACH);
      const guardian = await pageOf(CLIPS_GUARDIAN);

      await test.step("the coach takes it from the queue, reviews and sends", () =>
        review(coach, hands, films.first, roundId));
      await test.step("the family goes through its corrections and ticks a day", () =>
        read(guardian, hands, films.first, roundId));
      await sendRound(WHO.child.athleteId, [films.reply], roundId);
      await test.step("the coach sees old and new together and judges", () =>
        check(coach, hands, films, roundId));

      for (const page of [coach, guardian]) await page.context().close();
      expect(noise).toEqual([]);
    });
  }
}

async function review(page: Page, hands: Hands, filmed: Filmed, roundId: string): Promise<void> {
  await page.goto("/reviews");
  await hands.press(page.getByRole("listitem").getByRole("button", { name: "Take", exact: true }));
  await page.waitForURL(`**/reviews/${roundId}`);
  const figure = figureIn(page);
  const scale = figure.getByRole("slider", { name: "Frame" });
  await expect(scale).toBeEnabled();
  await hands.review(page, filmed, async (joints) => {
    const written = await writtenOn({ page, roundId, place: 0, figure, scale }, { measures: 1, marks: 1 });
    const { widthPx, heightPx } = filmed.parameters;
    expect(written.clip).toMatchObject({ widthPx, heightPx });
    expect(Object.fromEntries(written.eventMarks.map(({ event, frame }) => [event, frame]))).toEqual(
      momentsOf(filmed),
    );
    expect(Math.abs(worth(written, "front_knee_flexion") - flexionOf(joints))).toBeLessThan(0.1);
    expect(written.measures[0]?.frame).toBe(filmed.truth.events.ball_release);
    await expectAccessible(page);
  });
}

async function read(page: Page, hands: Hands, filmed: Filmed, roundId: string): Promise<void> {
  const { first_movement, peak_knee_height, ball_release } = filmed.truth.events;
  const shows = (frame: number) => expect(figureIn(page)).toHaveAttribute("data-frame", String(frame));
  await page.goto(`/family/${WHO.child.athleteId}/rounds/${roundId}`);
  await shows(first_movement);
  await hands.leaf(page);
  await shows(peak_knee_height);
  await hands.leafOn(page);
  await shows(ball_release);
  await expect(page.locator("[data-mark=limbs]")).toBeVisible();
  await expectAccessible(page);
  const day = page.locator("li:not([inert])").getByRole("button", { name: /^Practised / });
  await hands.press(day);
  await expect(day).toHaveAttribute("aria-pressed", "true");
}

async function check(
  page: Page,
  hands: Hands,
  { first, reply: answer }: { first: Filmed; reply: Filmed },
  roundId: string,
): Promise<void> {
  await page.goto(`/reviews/${roundId}`);
  await expect(sideOf(page, "New").getByRole("slider", { name: "Frame" })).toBeEnabled();
  await hands.markReply(page, answer);
  const contact = (filmed: Filmed) => filmed.truth.events.front_foot_contact;
  await hands.press(
    page.getByRole("button", {
      name: `Front foot contact: old frame ${contact(first) + 1}, new frame ${contact(answer) + 1}`,
    }),
  );
  await expect(sideOf(page, "Old")).toHaveAttribute("data-frame", String(contact(first)));
  await expect(sideOf(page, "New")).toHaveAttribute("data-frame", String(contact(answer)));
  const questions = page.getByRole("radiogroup", { name: "Did it take?" });
  await expect(questions).toHaveCount(VERDICTS.length);
  for (const [index, { steps, word }] of VERDICTS.entries()) {
    await hands.judge(page, questions.nth(index), steps);
    await expect(questions.nth(index).getByRole("radio", { name: word })).toBeChecked();
  }
  await expectAccessible(page);
  await expect(page.getByText(/^Saved/)).toBeVisible();
  await hands.settle(page);
  await expect(page.getByText("The round is settled and the family is told.")).toBeVisible();
}
