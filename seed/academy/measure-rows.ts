import { timeBaseOf } from "@/server/domain/clips/time-base";
import { canBeMeasuredFrom, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import { measureValue } from "@/server/domain/mechanics/measure-value";
import type { MeasuredPoint } from "@/server/domain/reviews/draft";
import type { Pixel } from "../clips/camera";
import type { Random } from "../seeded-random";
import type { SeenClip } from "./clip-rows";
import { type PicturePlaces, placesOn } from "./picture-places";
import { dayIn } from "./round-plan";
import type { Judged, Sending } from "./sending";
import type { Theme } from "./themes";
import type { World } from "./world";

/** How surely points are placed, as a share of a metre on the picture: a standard deviation of about a centimetre. */
const PLACED_WITHIN_M = 0.009;

const DAY_MS = 86_400_000;

/** Requests that still wait, of the films that are there. */
const WAITING = 4;

type Row = World["rows"]["measurement"][number];
type Seen = readonly [frame: number, at: Pixel];

/** Measures most of what was judged, where its clip allows it, and some of it a second time on a later day. */
export function writeMeasures(
  world: World,
  sending: Sending,
  written: { reviewId: string; judged: readonly Judged[] },
  random: Random,
): void {
  for (const { theme, clip } of written.judged) {
    const what = whatToMeasure(sending, theme, clip);
    const first = what && random.chance(0.8) ? measured(world, what, random) : null;
    if (first === null) continue;
    const row = { ...first, checkpointId: theme.checkpoint.id, reviewId: written.reviewId };
    world.rows.measurement.push(row);
    if (random.chance(0.3)) measureAgain(world, { sending, clip, row }, random);
    else if (clip.picture.isDrawn && openRequests(world) < WAITING) ask(world, row, sending.sentAtMs);
  }
}

/** What is measured of a theme on a clip; null where it cannot be from its view. */
function whatToMeasure(sending: Sending, { checkpoint, level }: Theme, clip: SeenClip): ToMeasure | null {
  const kind = checkpoint.measure;
  if (kind === null || !canBeMeasuredFrom(kind, clip.view)) return null;
  const frame = clip.frames[checkpoint.event];
  const untilFrame = kind === "finish_hold" ? heldUntil(clip, frame, level) : null;
  return { sending, clip, kind, frame, untilFrame };
}

interface ToMeasure {
  sending: Sending;
  clip: SeenClip;
  kind: MeasureKind;
  frame: number;
  untilFrame: number | null;
}

/** A measure whose points lie near their true places; null where they give no value. */
function measured(world: World, what: ToMeasure, random: Random): Row | null {
  const { sending, clip, kind, frame, untilFrame } = what;
  const places = placesOn(clip.picture);
  const spread = PLACED_WITHIN_M * places.metrePx;
  const points = pointsOf(kind, places, clip, frame).map(([on, [x, y]]): MeasuredPoint => {
    return { frame: on, x: rounded(x + bell(random) * spread), y: rounded(y + bell(random) * spread) };
  });
  const { fps } = clip.picture.parameters;
  const frameTimesMs = Array.from({ length: clip.picture.frameCount }, (_, at) => (at * 1000) / fps);
  const timeBase = timeBaseOf({ frameTimesMs, capturedFps: fps });
  const of = { view: clip.view, throws: sending.athlete.throws, timeBase, frameTimesMs };
  const result = measureValue({ kind, frame, untilFrame, points }, of);
  if ("problem" in result) return null;
  return {
    ...{ id: world.id("msr"), athleteId: sending.athlete.id, clipId: clip.id, view: clip.view },
    ...{ kind, frame, untilFrame, points: JSON.stringify(points), value: result.value },
    ...{ pitchType: clip.pitchType, coachPersonId: sending.athlete.coachId },
    ...{ measuredOn: dayIn(world, sending.sentAtMs), atMs: sending.sentAtMs },
  };
}

/** The same frame by the same coach or another, some days on. */
function measureAgain(
  world: World,
  { sending, clip, row }: { sending: Sending; clip: SeenClip; row: Row },
  random: Random,
): void {
  const askedAtMs = sending.sentAtMs + random.int(20, 90) * 60_000;
  const atMs = askedAtMs + Math.round(random.between(1, 5) * DAY_MS);
  if (atMs > world.nowMs) return;
  const untilFrame = typeof row.untilFrame === "number" ? row.untilFrame + random.int(-2, 2) : null;
  const again = measured(world, { sending, clip, kind: row.kind, frame: row.frame, untilFrame }, random);
  if (again === null) return;
  const { tamar, dell, ruben, ines } = world.staffIds;
  const coachPersonId = random.chance(0.5) ? row.coachPersonId : random.pick([tamar, dell, ruben, ines]);
  const { checkpointId, id: repeatOfId } = row;
  const when = { atMs, measuredOn: dayIn(world, atMs) };
  world.rows.measurement.push({ ...again, checkpointId, repeatOfId, coachPersonId, ...when });
  world.rows.remeasureRequest.push({
    ...{ id: world.id("rmr"), measurementId: row.id, athleteId: row.athleteId, askedAtMs },
    ...{ askedByPersonId: row.coachPersonId, forPersonId: coachPersonId },
    ...{ doneAtMs: when.atMs, doneMeasurementId: again.id },
  });
}

function openRequests(world: World): number {
  return world.rows.remeasureRequest.filter(({ doneAtMs }) => (doneAtMs ?? null) === null).length;
}

function ask(world: World, { id: measurementId, athleteId, coachPersonId }: Row, sentAtMs: number): void {
  world.rows.remeasureRequest.push({
    ...{ id: world.id("rmr"), measurementId, athleteId, askedByPersonId: coachPersonId },
    askedAtMs: sentAtMs + 10 * 60_000,
  });
}

/** How long a finish is held: half a second where it shows clearly, next to nothing where it does not. */
function heldUntil(clip: SeenClip, frame: number, level: number): number {
  const { frameCount, parameters } = clip.picture;
  return Math.min(frameCount - 1, frame + Math.round((0.1 + 0.14 * level) * parameters.fps));
}

/** The true places of a kind's points, in the order in which they are asked for. */
function pointsOf(kind: MeasureKind, places: PicturePlaces, clip: SeenClip, frame: number): Seen[] {
  const { joint, standing, rubber, plateLine } = places;
  const on = (...names: Parameters<PicturePlaces["joint"]>[1][]): Seen[] =>
    names.map((name) => [frame, joint(frame, name)]);
  const upright: Seen[] = [
    [standing.frame, standing.top],
    [standing.frame, standing.sole],
  ];
  const before = clip.frames.peak_knee_height;
  const points: Readonly<Record<MeasureKind, () => Seen[]>> = {
    front_knee_flexion: () => on("leadHip", "leadKnee", "leadAnkle"),
    trunk_tilt_forward: () => on("midHip", "midShoulder"),
    trunk_tilt_side: () => on("midHip", "midShoulder"),
    stride_length: () => [
      ...upright,
      [standing.frame, joint(standing.frame, "backAnkle")],
      ...on("leadAnkle"),
    ],
    stride_direction: () => [
      [frame, rubber[0]],
      [frame, rubber[1]],
      [frame, joint(standing.frame, "backToe")],
      [frame, plateLine],
      ...on("leadToe"),
    ],
    shoulder_tilt: () => on("gloveShoulder", "throwingShoulder"),
    glove_height: () => on("midHip", "midShoulder", "gloveHand"),
    head_travel: () => [...upright, [before, joint(before, "head")], ...on("head")],
    finish_hold: () => [],
  };
  return points[kind]();
}

/** A number about 0, nearly as an error of placing is spread: the sum of twelve even ones, less six. */
function bell(random: Random): number {
  return Array.from({ length: 12 }, () => random.next()).reduce((sum, each) => sum + each, -6);
}

const rounded = (px: number) => Math.round(px * 4) / 4;
