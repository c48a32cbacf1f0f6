import type { MarkGuide } from "@/server/domain/mechanics/mark-guide";
import type { Pixel } from "../clips/camera";
import type { SeenClip } from "./clip-rows";
import { type PicturePlaces, placesOn } from "./picture-places";
import type { Theme } from "./themes";
import type { World } from "./world";

/** Draws the guide of what is corrected on its frame, fitted to the true places; nothing on a film that is gone. */
export function drawMark(
  world: World,
  reviewId: string,
  { theme, clip, position }: { theme: Theme; clip: SeenClip; position: number },
): void {
  const { checkpoint } = theme;
  const frame = clip.frames[checkpoint.event];
  if (checkpoint.guide === null || !clip.picture.isDrawn) return;
  const points = pointsOf(checkpoint.guide, placesOn(clip.picture), frame, checkpoint.id);
  if (points.length === 0) return;
  world.rows.drawnMark.push({
    ...{ id: world.id("mrk"), reviewId, checkpointId: checkpoint.id, clipId: clip.id },
    ...{ frame, untilFrame: null, guide: checkpoint.guide, position },
    points: JSON.stringify(points.map(([x, y]) => ({ x: Math.round(x), y: Math.round(y) }))),
  });
}

/** A ring about a hand is about this wide, in metres from its middle. */
const RING_M = 0.14;

function pointsOf(guide: MarkGuide, places: PicturePlaces, frame: number, checkpointId: string): Pixel[] {
  const { joint, rubber, plateLine, metrePx } = places;
  const at = (...names: Parameters<PicturePlaces["joint"]>[1][]) => names.map((name) => joint(frame, name));
  if (guide === "plumb") return at("head");
  if (guide === "level") return at("gloveShoulder", "throwingShoulder");
  if (guide === "plate_line") return [between(rubber), plateLine];
  if (guide === "limbs") {
    return checkpointId === "arm-up-in-time"
      ? at("throwingShoulder", "throwingElbow", "throwingWrist")
      : at("leadHip", "leadKnee", "leadAnkle");
  }
  if (guide !== "ring") return [];
  const [x, y] = joint(frame, "gloveHand");
  return [
    [x, y],
    [x + RING_M * metrePx, y],
  ];
}

const between = ([a, b]: readonly [Pixel, Pixel]): Pixel => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
