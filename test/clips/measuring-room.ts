import type { Locator, Page } from "@playwright/test";
import { bodyOf } from "../../seed/clips/body";
import { cameraOf, pixelOf } from "../../seed/clips/camera";
import type { ClipParameters } from "../../seed/clips/clip-parameters";
import { deliveryOf } from "../../seed/clips/delivery";
import type { JointName } from "../../seed/clips/figure";
import type { ClipTruth } from "../../seed/clips/truth";
import type { RoomView } from "../../server/api/reviews/shapes";
import { timeBaseOf } from "../../server/domain/clips/time-base";
import type { MeasureKind } from "../../server/domain/mechanics/measure-kind";
import { measureValue } from "../../server/domain/mechanics/measure-value";
import type { Place } from "../../server/domain/reviews/draft";
import { expect } from "../e2e/academy";

/** The room as a coach has it before them, on one of its clips. */
export interface Room {
  page: Page;
  roundId: string;
  /** Which of the round's clips, from 0. */
  place: number;
  figure: Locator;
  scale: Locator;
}

export async function openRoom(page: Page, roundId: string, place: number): Promise<Room> {
  await page.goto(`/reviews/${roundId}`);
  await page.getByRole("radiogroup", { name: "Clip" }).locator("label").nth(place).click();
  const figure = page.getByRole("figure", { name: /clip$/ });
  const scale = figure.getByRole("slider", { name: "Frame" });
  await expect(scale).toBeEnabled();
  return { page, roundId, place, figure, scale };
}

export async function goTo({ figure, scale }: Room, frame: number): Promise<void> {
  await figure.evaluate((element) => element.scrollIntoView({ block: "start" }));
  await scale.fill(String(frame));
  await expect(figure).toHaveAttribute("data-frame", String(frame));
}

/** Presses on a place of the picture, in its own pixels, after it was enlarged around that place. */
export async function placeAt({ page, figure }: Room, at: Place, zoomSteps: number): Promise<void> {
  await page.keyboard.press("0");
  const far = await onScreen(figure, at);
  await page.mouse.move(far.x, far.y);
  for (let step = 0; step < zoomSteps; step += 1) {
    const before = await widthOf(figure);
    await page.mouse.wheel(0, -150);
    await expect.poll(() => widthOf(figure)).toBeGreaterThan(before);
  }
  const near = await onScreen(figure, at);
  await page.mouse.click(near.x, near.y);
}

const overlayOf = (figure: Locator) => figure.locator("svg[data-overlay]");
const widthOf = (figure: Locator) => overlayOf(figure).evaluate((svg) => svg.getBoundingClientRect().width);

/** Where on the screen a place of the picture lies. */
export function onScreen(figure: Locator, at: Place): Promise<Place> {
  return overlayOf(figure).evaluate((svg, { x, y }) => {
    const box = svg.getBoundingClientRect();
    const [, , widthPx = 1, heightPx = 1] = (svg.getAttribute("viewBox") ?? "").split(" ").map(Number);
    return { x: box.left + (x * box.width) / widthPx, y: box.top + (y * box.height) / heightPx };
  }, at);
}

export function jointAt({ frames }: ClipTruth, frame: number, joint: JointName): Place {
  const [x = 0, y = 0] = frames[frame]?.joints[joint] ?? [];
  return { x, y };
}

/** Standing straight on the rubber: the top of the head and the sole under it, as the camera sees them. */
export function standingStraight(parameters: ClipParameters): [top: Place, sole: Place] {
  const { heightM, ankleM } = bodyOf(parameters.ageYears, parameters.heightM);
  const [x, y, z] = deliveryOf(parameters)(0).joints.backAnkle;
  const seen = (heightAboveM: number): Place => {
    const [across, down] = pixelOf([x, y - ankleM + heightAboveM, z], cameraOf(parameters));
    return { x: across, y: down };
  };
  return [seen(heightM), seen(0)];
}

/** The joints of the front knee's bend in the order they are placed. */
export const FRONT_KNEE = ["leadHip", "leadKnee", "leadAnkle"] as const;

/** The bend of the front knee as the picture has it: of the true places, in the plane of the picture. */
export function flexionOnPicture(truth: ClipTruth, frame: number): number {
  return flexionOf(FRONT_KNEE.map((joint) => jointAt(truth, frame, joint)));
}

/** The bend at the second of three places, in degrees. */
export function flexionOf([hip, knee, ankle]: readonly Place[]): number {
  if (!hip || !knee || !ankle) throw new Error("A joint is missing.");
  const wayDeg = (from: Place, to: Place) => (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  return Math.abs(((wayDeg(knee, ankle) - wayDeg(hip, knee) + 540) % 360) - 180);
}

/** The round as the academy keeps it. */
export async function roomOf({ page, roundId }: Pick<Room, "page" | "roundId">): Promise<RoomView> {
  const input = encodeURIComponent(JSON.stringify({ json: { roundId } }));
  const answer = await page.request.get(`/api/trpc/reviews.room?input=${input}`);
  return (await answer.json()).result.data.json;
}

/** What of the draft is on one clip, as soon as there are so many measures and marks of it. */
export async function writtenOn(room: Room, { measures = 0, marks = 0 }) {
  const clip = (await roomOf(room)).clips[room.place];
  if (!clip) throw new Error("The clip is not in the room.");
  const own = async () => {
    const { reviewDraft } = await roomOf(room);
    const here = <Row extends { clipId: string }>(rows: readonly Row[] = []) =>
      rows.filter((row) => row.clipId === clip.id);
    const { document } = reviewDraft ?? {};
    return {
      measures: here(document?.measures),
      marks: here(document?.marks),
      eventMarks: here(document?.eventMarks),
    };
  };
  await expect
    .poll(async () => {
      const now = await own();
      return [now.measures.length, now.marks.length];
    })
    .toEqual([measures, marks]);
  return { clip, ...(await own()) };
}

/** What a measure is worth by the academy's own reckoning. */
export function worth({ clip, measures }: Awaited<ReturnType<typeof writtenOn>>, kind: MeasureKind): number {
  const measure = measures.find((row) => row.kind === kind);
  if (!measure) throw new Error(`${kind} was not measured.`);
  const timeBase = timeBaseOf(clip);
  const { view, frameTimesMs } = clip;
  const result = measureValue(measure, { view, frameTimesMs, timeBase, throws: "right" });
  if ("problem" in result) throw new Error(result.problem);
  return result.value;
}
