import { type Canvas, createCanvas, type SKRSContext2D } from "@napi-rs/canvas";
import { ballAt } from "./ball";
import { type Camera, cameraOf, depthM, pixelOf } from "./camera";
import type { ClipParameters } from "./clip-parameters";
import { type Delivery, deliveryOf } from "./delivery";
import { lookOf } from "./look";
import { ink, lightColours } from "./palette";
import { drawPitcher } from "./pitcher";
import { drawScenery } from "./scenery";
import { fillPath, outlineAround } from "./shapes";
import { EVENT_TIMES_S } from "./timeline";
import type { Vector } from "./vector";

const BALL_RADIUS_M = 0.037;

/** Draws any frame of one clip onto one canvas, which is used again for the next. */
export type FrameArtist = (frame: number) => Canvas;

/** An artist for the clip that parameters describe; the lane is drawn once and kept. */
export function frameArtist(parameters: ClipParameters): FrameArtist {
  const camera = cameraOf(parameters);
  const delivery = deliveryOf(parameters);
  const look = lookOf(parameters);
  const lane = createCanvas(parameters.widthPx, parameters.heightPx);
  drawScenery(lane.getContext("2d"), camera, parameters);
  const canvas = createCanvas(parameters.widthPx, parameters.heightPx);
  const context = canvas.getContext("2d");
  return (frame) => {
    const timeS = frame / parameters.fps;
    context.drawImage(lane, 0, 0);
    const ballBehind =
      depthM(ballAt(delivery, parameters, timeS), camera) > depthM(delivery(timeS).joints.midHip, camera);
    const drawBall = () => drawBallAt(context, camera, delivery, parameters, timeS);
    if (ballBehind) drawBall();
    drawPitcher(context, camera, delivery(timeS), look);
    if (!ballBehind) drawBall();
    return canvas;
  };
}

/** The ball: hidden by the glove until the hands part, streaked over half a frame once in flight. */
function drawBallAt(
  context: SKRSContext2D,
  camera: Camera,
  delivery: Delivery,
  parameters: ClipParameters,
  timeS: number,
): void {
  if (timeS < HANDS_PART_S) return;
  const trailS = Math.max(EVENT_TIMES_S.ball_release, timeS - 0.5 / parameters.fps);
  const places = timeS <= trailS ? [timeS] : [trailS, timeS];
  const spots = places
    .map((placeS) => ballAt(delivery, parameters, placeS))
    .filter((place) => depthM(place, camera) > 0.4)
    .map((place) => spotOf(place, camera));
  if (spots.length !== places.length) return;
  fillPath(context, outlineAround(spots), ink([252, 252, 248]));
  context.strokeStyle = ink(lightColours(parameters.light).shade, 0.55);
  context.lineWidth = 0.7;
  context.stroke();
}

const HANDS_PART_S = 1.36;

function spotOf(place: Vector, camera: Camera) {
  const radiusPx = Math.max(1.8, (BALL_RADIUS_M * camera.focalPx) / depthM(place, camera));
  return { at: pixelOf(place, camera), radiusPx };
}
