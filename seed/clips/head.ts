import type { SKRSContext2D } from "@napi-rs/canvas";
import { type Camera, depthM, type Pixel, pixelOf } from "./camera";
import type { Figure } from "./figure";
import type { Look } from "./look";
import { blend, ink } from "./palette";
import { convexHull, fillPath } from "./shapes";
import { cross, dot, plus, times, type Vector } from "./vector";

/** Draws head, hair and cap; the peak of the cap shows which way the head faces. */
export function drawHead(context: SKRSContext2D, camera: Camera, figure: Figure, look: Look): void {
  const { head } = figure.joints;
  const radiusM = look.body.headRadiusM;
  const radiusPx = (radiusM * camera.focalPx) / depthM(head, camera);
  const facesCamera = -dot(figure.headAhead, camera.ahead);
  const peak = peakOutline(figure, radiusM, camera);
  const drawPeak = () => {
    fillPath(context, peak, ink(blend(look.kit.cap, look.light.shade, 0.28)));
  };
  if (facesCamera < 0) drawPeak();
  drawSkull(context, camera, figure, look, radiusPx, facesCamera);
  if (facesCamera >= 0) drawPeak();
}

function drawSkull(
  context: SKRSContext2D,
  camera: Camera,
  figure: Figure,
  { kit, light, body }: Look,
  radiusPx: number,
  facesCamera: number,
): void {
  const [x, y] = pixelOf(figure.joints.head, camera);
  const top = pixelOf(plus(figure.joints.head, times(figure.headUp, body.headRadiusM)), camera);
  const sideways = dot(figure.headAhead, camera.right);
  context.save();
  context.translate(x, y);
  context.rotate(Math.atan2(top[0] - x, y - top[1]));
  const skin = context.createLinearGradient(-radiusPx, -radiusPx, radiusPx, radiusPx);
  skin.addColorStop(0, ink(blend(kit.skin, [255, 255, 255], 0.1)));
  skin.addColorStop(1, ink(blend(kit.skin, light.shade, 0.34)));
  fillEgg(context, radiusPx, skin);
  drawHair(context, radiusPx, sideways, facesCamera, ink(blend(kit.hair, light.shade, 0.1)));
  const cap = context.createLinearGradient(-radiusPx, -radiusPx, radiusPx, 0);
  cap.addColorStop(0, ink(blend(kit.cap, [255, 255, 255], 0.16)));
  cap.addColorStop(1, ink(blend(kit.cap, light.shade, 0.4)));
  context.fillStyle = cap;
  context.beginPath();
  context.ellipse(0, -radiusPx * 0.16, radiusPx * 0.93, radiusPx * 0.92, 0, Math.PI, 2 * Math.PI);
  context.closePath();
  context.fill();
  context.restore();
}

function fillEgg(
  context: SKRSContext2D,
  radiusPx: number,
  fill: ReturnType<SKRSContext2D["createLinearGradient"]>,
): void {
  context.fillStyle = fill;
  context.beginPath();
  context.ellipse(0, 0, radiusPx * 0.84, radiusPx * 1.04, 0, 0, 2 * Math.PI);
  context.fill();
}

/** Hair covers the side of the head that is turned away from where it faces. */
function drawHair(
  context: SKRSContext2D,
  radiusPx: number,
  sideways: number,
  facesCamera: number,
  hair: string,
): void {
  context.save();
  context.beginPath();
  context.ellipse(0, 0, radiusPx * 0.86, radiusPx * 1.04, 0, 0, 2 * Math.PI);
  context.clip();
  context.fillStyle = hair;
  const showing = radiusPx * (0.75 - facesCamera * 0.95);
  const away = sideways >= 0 ? -1 : 1;
  const edge = away * (radiusPx * 0.9 - showing);
  context.fillRect(
    away < 0 ? -radiusPx : edge,
    -radiusPx,
    away < 0 ? edge + radiusPx : radiusPx - edge,
    radiusPx * 1.72,
  );
  context.restore();
}

function peakOutline(figure: Figure, radiusM: number, camera: Camera): Pixel[] {
  const aside = cross(figure.headAhead, figure.headUp);
  const at = (ahead: number, side: number, up: number): Vector =>
    plus(
      figure.joints.head,
      plus(
        plus(times(figure.headAhead, ahead * radiusM), times(aside, side * radiusM)),
        times(figure.headUp, up * radiusM),
      ),
    );
  const rim = [
    at(0.45, 0.72, 0.22),
    at(0.45, -0.72, 0.22),
    at(1.2, 0.55, 0.12),
    at(1.2, -0.55, 0.12),
    at(1.55, 0.2, 0.06),
    at(1.55, -0.2, 0.06),
    at(0.6, 0, 0.42),
  ];
  return convexHull(rim.map((place) => pixelOf(place, camera)));
}
