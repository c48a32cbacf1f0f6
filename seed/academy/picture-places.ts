import { bodyOf } from "../clips/body";
import { cameraOf, type Pixel, pixelOf } from "../clips/camera";
import { deliveryOf } from "../clips/delivery";
import type { JointName, Joints } from "../clips/figure";
import { groundHeightM } from "../clips/ground";
import type { Vector } from "../clips/vector";
import type { SeenPicture } from "./clip-rows";

/** Half the rubber's length, in metres: 24 inches in all (official field dimensions, from memory). */
const HALF_RUBBER_M = 0.305;

/** How far in front of the rubber the line to the plate is still pointed at, in metres. */
const LINE_M = 2.6;

/** Where things are seen on the frames of a clip, in its pixels. Frames count from 0. */
export interface PicturePlaces {
  joint: (frame: number, name: JointName) => Pixel;
  /** The top of the head and the sole, standing before the first movement. */
  standing: { frame: number; top: Pixel; sole: Pixel };
  /** The two ends of the rubber's front edge, and a place on the line to the plate. */
  rubber: readonly [Pixel, Pixel];
  plateLine: Pixel;
  /** Pixels that a metre takes at the pitcher. */
  metrePx: number;
}

/** The true places on a clip, as its drawing has them. */
export function placesOn({ parameters, startS }: SeenPicture): PicturePlaces {
  const camera = cameraOf(parameters);
  const delivery = deliveryOf(parameters);
  const { headRadiusM, ankleM } = bodyOf(parameters.ageYears, parameters.heightM);
  const seen = (place: Vector) => pixelOf(place, camera);
  const at = (frame: number): Joints => delivery(frame / parameters.fps - startS).joints;
  const first = Math.ceil(startS * parameters.fps);
  const { head, backAnkle } = at(first);
  const [soleY, x, z] = [backAnkle[1] - ankleM, backAnkle[0], backAnkle[2]];
  const [low, high] = [seen([x, soleY, z]), seen([x, soleY + 1, z])];
  return {
    joint: (frame, name) => seen(at(frame)[name]),
    standing: { frame: first, top: seen([head[0], head[1] + headRadiusM, head[2]]), sole: low },
    rubber: [seen([0, groundHeightM(0), -HALF_RUBBER_M]), seen([0, groundHeightM(0), HALF_RUBBER_M])],
    plateLine: seen([LINE_M, groundHeightM(LINE_M), 0]),
    metrePx: Math.hypot(high[0] - low[0], high[1] - low[1]),
  };
}
