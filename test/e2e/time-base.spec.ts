import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { clipParameters } from "../../seed/clips/clip-parameters";
import { EVENT_TIMES_S } from "../../seed/clips/timeline";
import { truthOf } from "../../seed/clips/truth";
import { drawnEverywhere } from "../../server/domain/clips/conversion";
import {
  CLIPS_ADDRESS,
  CLIPS_COACH,
  type ClipsAcademy,
  command,
  sendRound,
  signedIn,
  startClipsAcademy,
} from "../clips/clips-academy";
import { hevcClip, hevcClipWith } from "../helpers/hevc-clip";
import { makeClip } from "../helpers/make-clip";
import { standIn } from "../helpers/stand-in-program";
import { WHO } from "../helpers/who";
import { expect, expectAccessible, test } from "./academy";
import { markEvents } from "./hands";

/** The frames and moments of a drawn delivery as a phone records them at 240 a second. */
const TRUTH = truthOf(clipParameters({ fps: 240 }));
const STRETCH = 8;

let academy: ClipsAcademy;
let programs: string;
let cookies: Awaited<ReturnType<Awaited<ReturnType<typeof signedIn>>["storageState"]>>["cookies"];
const rounds = { slow: "", films: "" };

test.use({ baseURL: CLIPS_ADDRESS });

test.beforeAll(async () => {
  test.setTimeout(180_000);
  programs = mkdtempSync(join(tmpdir(), "slabside-programs-"));
  await fillPrograms();
  process.env.PATH = `${join(programs, "bin")}:${process.env.PATH}`;
  academy = await startClipsAcademy();
  const coach = await signedIn(CLIPS_COACH);
  const stretched = await makeClip({ frameTimesMs: timesOf(() => STRETCH) });
  const ramped = await makeClip({ frameTimesMs: timesOf((at) => (at > 200 && at < 500 ? STRETCH : 1)) });
  rounds.slow = await sendRound(WHO.child.athleteId, [{ file: stretched }, { file: ramped, view: "front" }]);
  rounds.films = await sendRound(WHO.child.athleteId, [
    { file: hevcClip() },
    { file: await hevcClipWith({ rotationDeg: 90 }), view: "front" },
  ]);
  for (const roundId of Object.values(rounds)) await command(coach, "rounds.take", { roundId });
  cookies = (await coach.storageState()).cookies;
  await coach.dispose();
});

test.afterAll(async () => {
  await academy?.stop();
  rmSync(programs, { recursive: true, force: true });
});

/**
 * A program in the place of the one that copies films, so that nothing hangs on this machine: it hands over a film with
 * the frames of the upright one, which is no copy of the turned one. It waits until the page has been looked at.
 */
async function fillPrograms() {
  mkdirSync(join(programs, "bin"));
  const program = await standIn(join(programs, "bin"), "copies when told");
  symlinkSync(program, join(programs, "bin", "ffmpeg"));
  const frameTimesMs = (await upright()).map((timeS) => timeS * 1000);
  writeFileSync(join(programs, "bin", "made.mp4"), await makeClip({ frameTimesMs }));
}

async function upright(): Promise<number[]> {
  const { BufferSource, EncodedPacketSink, Input, MP4 } = await import("mediabunny");
  const input = new Input({ source: new BufferSource(hevcClip()), formats: [MP4] });
  const track = await input.getPrimaryVideoTrack();
  if (!track || drawnEverywhere((await track.getCodecParameterString()) ?? ""))
    throw new Error("Another film.");
  const times: number[] = [];
  for await (const packet of new EncodedPacketSink(track).packets()) times.push(packet.timestamp);
  input.dispose();
  return times.sort((a, b) => a - b);
}

/** Frame times where the spacing after each frame is stretched. */
function timesOf(stretchAt: (frame: number) => number): number[] {
  let timeMs = 0;
  return TRUTH.frames.map((_, at) => {
    const now = timeMs;
    timeMs += (1000 / TRUTH.fps) * stretchAt(at);
    return now;
  });
}

async function openRoom(page: Page, roundId: string) {
  await page.context().addCookies(cookies);
  await page.goto(`/reviews/${roundId}`);
  await expect(page.getByRole("slider", { name: "Frame" })).toBeVisible();
}

const choose = (page: Page, view: string) =>
  page.getByRole("radiogroup", { name: "Clip" }).getByText(view, { exact: true }).click();

test("a stretched clip shows frames alone until a coach sets its rate, and then the delivery's true times", async ({
  academy: { visitor },
}) => {
  const page = await visitor();
  await openRoom(page, rounds.slow);
  await markEvents(page, TRUTH.events);
  const times = page.getByLabel("Times between the moments");
  await expect(times.getByText("35 frames")).toBeVisible();
  await expect(page.getByText(/^Frames only: nobody has said/)).toBeVisible();

  await page.getByRole("button", { name: "Set the rate" }).click();
  const dialog = page.getByRole("dialog", { name: "How fast was it recorded?" });
  await expect(
    dialog.getByText("contact to release would be 0.146 s: nearest to the published time"),
  ).toBeVisible();
  await expectAccessible(page);
  await dialog.getByText("240 a second").click();
  await dialog.getByRole("button", { name: "Set the rate" }).click();
  await expect(
    page.getByText(/Recorded at 240 frames a second, by a coach: .+ 8 times slower/),
  ).toBeVisible();

  const shown = await times.getByRole("definition").allInnerTexts();
  const moments = [
    "first_movement",
    "peak_knee_height",
    "front_foot_contact",
    "ball_release",
    "finish",
  ] as const;
  expect(shown).toHaveLength(4);
  for (const [at, words] of shown.entries()) {
    const [, seconds = "", error = ""] = /^(\d\.\d{3}) s ± (\d\.\d{3})$/.exec(words) ?? [];
    const [from, to] = [moments[at], moments[at + 1]];
    const trueS = from && to ? EVENT_TIMES_S[to] - EVENT_TIMES_S[from] : Number.NaN;
    expect(Math.abs(Number(seconds) - trueS)).toBeLessThanOrEqual(Number(error) + 0.0005);
  }
});

test("a clip whose speed changes on the way gives no times, says why, and offers no rate", async ({
  academy: { visitor },
}) => {
  const page = await visitor();
  await openRoom(page, rounds.slow);
  await choose(page, "Front");
  await expect(page.getByText(/^Frames only: the speed of this clip changes on the way/)).toBeVisible();
  await expect(page.getByRole("button", { name: /the rate$/ })).toHaveCount(0);
});

test("a film this browser cannot draw shows its copy being made, then the copy by itself, or how to send it otherwise", async ({
  academy: { visitor },
}) => {
  const page = await visitor();
  await openRoom(page, rounds.films);
  await expect(page.getByText("This browser cannot draw this film yet")).toBeVisible();
  await expect(page.getByRole("progressbar", { name: "Copy" })).toBeVisible();
  await expectAccessible(page);
  writeFileSync(join(programs, "bin", "go"), "");
  await expect(page.getByText("This browser cannot draw this film yet")).toBeHidden();
  await expect(page.getByRole("button", { name: "Mark: First movement on frame 1" })).toBeEnabled();
  await choose(page, "Front");
  await expect(page.getByText(/^The clip is kept.+most compatible format/)).toBeVisible();
});
