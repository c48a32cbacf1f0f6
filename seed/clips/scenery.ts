import type { SKRSContext2D } from "@napi-rs/canvas";
import { type Camera, depthM, pixelOf } from "./camera";
import type { ClipParameters } from "./clip-parameters";
import { groundHeightM, MOUND, MOUND_TOE_M, plateDistanceM } from "./ground";
import { blend, ink, type LightColours, lightColours } from "./palette";
import { fillPath } from "./shapes";
import { between, mirrored, type Vector } from "./vector";

/** Half the width of the lane and the height of its netting, in metres. */
const LANE = { halfWidthM: 1.9, netM: 3, backM: -3.2, wallM: -4.6, sideWallM: 4.4, roofM: 6 } as const;
const NEAR_M = 0.25;
const POSTS_M = 3.2;

type Sheet = (corners: readonly Vector[], fill: string | CanvasGradientLike) => void;
type CanvasGradientLike = ReturnType<SKRSContext2D["createLinearGradient"]>;
type Line = (from: Vector, to: Vector, widthM: number, colour: string) => void;
type Painter = {
  readonly sheet: Sheet;
  readonly line: Line;
  readonly colours: LightColours;
  readonly plateM: number;
};

/** Draws the indoor lane without the pitcher: wall, floor, netting, plate and mound. */
export function drawScenery(context: SKRSContext2D, camera: Camera, parameters: ClipParameters): void {
  const colours = lightColours(parameters.light);
  const side = parameters.throws === "R" ? (place: Vector) => place : mirrored;
  const painter: Painter = {
    sheet: (corners, fill) => {
      const shown = inFront(corners.map(side), camera).map((place) => pixelOf(place, camera));
      if (shown.length > 2) fillPath(context, shown, fill);
    },
    line: (from, to, widthM, colour) => strokeLine(context, camera, side(from), side(to), widthM, colour),
    colours,
    plateM: plateDistanceM(parameters.ageYears),
  };
  drawRoom(context, camera, painter);
  drawFloor(context, camera, painter);
  for (const z of parameters.view === "open_side"
    ? [-1]
    : parameters.view === "closed_side"
      ? [1]
      : [-1, 1]) {
    drawNetting(painter, z * LANE.halfWidthM);
  }
  if (parameters.view === "front") {
    drawNet(painter, [LANE.backM, 0, -LANE.halfWidthM], [LANE.backM, 0, LANE.halfWidthM]);
  }
  if (parameters.view === "back") drawBackstop(painter);
  drawMound(painter);
}

function drawRoom(context: SKRSContext2D, camera: Camera, painter: Painter): void {
  const { colours, plateM } = painter;
  const horizonPx = camera.middlePx[1];
  const wall = context.createLinearGradient(0, 0, 0, horizonPx * 1.5);
  wall.addColorStop(0, ink(colours.wallTop));
  wall.addColorStop(1, ink(colours.wallFoot));
  context.fillStyle = wall;
  context.fillRect(0, 0, camera.middlePx[0] * 2, camera.middlePx[1] * 2);
  const endM = plateM + 3;
  const [left, right] = [-LANE.sideWallM, LANE.sideWallM];
  for (const z of [left, right]) drawWall(painter, [LANE.wallM, 0, z], [endM, 0, z]);
  const x = camera.ahead[0] > 0 ? endM : LANE.wallM;
  painter.sheet(wallPanel([x, 0, left], [x, 0, right], 0, LANE.roofM), wall);
  drawWall(painter, [x, 0, left], [x, 0, right]);
}

/** Padding and windows along a wall from one corner to the other. */
function drawWall({ sheet, line, colours }: Painter, from: Vector, to: Vector): void {
  const raised = (place: Vector, y: number): Vector => [place[0], y, place[2]];
  const lengthM = Math.hypot(to[0] - from[0], to[2] - from[2]);
  const at = (alongM: number) => between(from, to, alongM / lengthM);
  sheet(wallPanel(from, to, 0, 1), ink(colours.pad));
  line(raised(from, 1), raised(to, 1), 0.04, ink(blend(colours.pad, colours.shade, 0.3)));
  for (let m = 0; m < lengthM; m += 1.2) {
    line(at(m), raised(at(m), 1), 0.015, ink(blend(colours.pad, colours.shade, 0.25)));
  }
  const panes = Math.floor(lengthM / 2.9);
  for (let n = 0; n < panes; n++) {
    const middleM = ((n + 0.5) * lengthM) / panes;
    sheet(wallPanel(at(middleM - 1), at(middleM + 1), 2.05, 3.05), ink(colours.window, 0.85));
    for (const m of [middleM - 1, middleM, middleM + 1]) {
      line(raised(at(m), 2.05), raised(at(m), 3.05), 0.05, ink(blend(colours.wallFoot, colours.shade, 0.12)));
    }
    line(
      raised(at(middleM - 1), 2.05),
      raised(at(middleM + 1), 2.05),
      0.07,
      ink(blend(colours.wallFoot, colours.shade, 0.2)),
    );
  }
}

function drawFloor(context: SKRSContext2D, camera: Camera, { sheet, line, colours, plateM }: Painter): void {
  const turf = context.createLinearGradient(0, camera.middlePx[1], 0, camera.middlePx[1] * 2);
  turf.addColorStop(0, ink(colours.floorFar));
  turf.addColorStop(1, ink(colours.floorNear));
  const [from, to] = [LANE.wallM, plateM + 3];
  sheet(floorPiece(from, to, -LANE.sideWallM, LANE.sideWallM + 3), turf);
  for (let x = Math.ceil(from); x < to; x += 2) {
    sheet(floorPiece(x, x + 1, -LANE.sideWallM, LANE.sideWallM + 3), ink([255, 255, 255], 0.035));
  }
  const chalk = ink(colours.chalkLine, 0.55);
  for (const z of [-LANE.halfWidthM + 0.2, LANE.halfWidthM - 0.2])
    line([from, 0, z], [to, 0, z], 0.05, chalk);
  line([MOUND_TOE_M + 0.1, 0, 0], [plateM - 0.6, 0, 0], 0.05, ink(colours.chalkLine, 0.7));
  drawPlate(sheet, colours, plateM);
}

function drawPlate(sheet: Sheet, colours: LightColours, plateM: number): void {
  const half = 0.216;
  sheet(
    [
      [plateM - half, 0.005, -half],
      [plateM, 0.005, -half],
      [plateM + half, 0.005, 0],
      [plateM, 0.005, half],
      [plateM - half, 0.005, half],
    ],
    ink(colours.chalkLine),
  );
}

/** Netting along the lane, hung from a cable between posts. */
function drawNetting(painter: Painter, z: number): void {
  drawNet(painter, [LANE.backM, 0, z], [painter.plateM + 1.5, 0, z]);
}

function drawNet({ line, colours }: Painter, from: Vector, to: Vector): void {
  const lengthM = Math.hypot(to[0] - from[0], to[2] - from[2]);
  const at = (alongM: number, y: number): Vector => {
    const foot = between(from, to, alongM / lengthM);
    return [foot[0], y, foot[2]];
  };
  const mesh = ink(colours.net, 0.2);
  for (let m = 0; m < lengthM; m += 0.3) line(at(m, 0), at(m, LANE.netM - sagM(m)), 0.008, mesh);
  for (let y = 0.3; y < LANE.netM - 0.1; y += 0.3) line(at(0, y), at(lengthM, y), 0.008, mesh);
  for (let m = 0; m <= lengthM; m += POSTS_M)
    line(at(m, 0), at(m, LANE.netM + 0.05), 0.055, ink(colours.net, 0.75));
  line(at(0, LANE.netM), at(lengthM, LANE.netM), 0.025, ink(colours.net, 0.8));
}

function sagM(alongM: number): number {
  return 0.03 * (1 - Math.cos((alongM / POSTS_M) * 2 * Math.PI));
}
/** A padded screen behind the plate with a painted strike zone. */
function drawBackstop({ sheet, line, colours, plateM }: Painter): void {
  const x = plateM + 1.4;
  sheet(wallPanel([x, 0, -1.4], [x, 0, 1.4], 0, 2), ink(blend(colours.mound, colours.shade, 0.35)));
  const zone = [0.45, 1.05] as const;
  for (const y of zone) line([x, y, -0.25], [x, y, 0.25], 0.035, ink(colours.chalkLine, 0.85));
  for (const z of [-0.25, 0.25]) line([x, zone[0], z], [x, zone[1], z], 0.035, ink(colours.chalkLine, 0.85));
}

function drawMound({ sheet, line, colours }: Painter): void {
  const w = MOUND.halfWidthM;
  const along = [MOUND.backM, MOUND.slopeFromM, MOUND_TOE_M] as const;
  const top = (x: number, z: number): Vector => [x, groundHeightM(x), z];
  const foot = (x: number, z: number): Vector => [x, 0, z];
  const dark = ink(blend(colours.mound, colours.shade, 0.3));
  sheet([foot(along[0], -w), foot(along[0], w), top(along[0], w), top(along[0], -w)], dark);
  for (const [n, colour] of [colours.mound, blend(colours.mound, [255, 255, 255], 0.1)].entries()) {
    const [from, to] = [along[n] ?? 0, along[n + 1] ?? 0];
    sheet([top(from, -w), top(to, -w), top(to, w), top(from, w)], ink(colour));
  }
  for (const z of [-w, w]) {
    sheet([foot(along[0], z), top(along[0], z), top(along[1], z), foot(along[2], z)], dark);
  }
  const y = MOUND.topM;
  sheet(boxTop(-0.152, 0, -0.305, 0.305, y + 0.012), ink(colours.chalkLine));
  line(
    [-0.002, y + 0.002, -0.305],
    [-0.002, y + 0.002, 0.305],
    0.018,
    ink(blend(colours.chalkLine, colours.shade, 0.35)),
  );
}

function boxTop(fromX: number, toX: number, fromZ: number, toZ: number, y: number): Vector[] {
  return [
    [fromX, y, fromZ],
    [toX, y, fromZ],
    [toX, y, toZ],
    [fromX, y, toZ],
  ];
}

function floorPiece(fromX: number, toX: number, fromZ: number, toZ: number): Vector[] {
  return boxTop(fromX, toX, fromZ, toZ, 0);
}

function wallPanel(from: Vector, to: Vector, fromY: number, toY: number): Vector[] {
  return [
    [from[0], fromY, from[2]],
    [to[0], fromY, to[2]],
    [to[0], toY, to[2]],
    [from[0], toY, from[2]],
  ];
}

function strokeLine(
  context: SKRSContext2D,
  camera: Camera,
  from: Vector,
  to: Vector,
  widthM: number,
  colour: string,
): void {
  const [a, b] = inFront([from, to], camera);
  if (a === undefined || b === undefined) return;
  const middle = between(a, b, 0.5);
  context.strokeStyle = colour;
  context.lineWidth = Math.max(0.6, (widthM * camera.focalPx) / depthM(middle, camera));
  context.beginPath();
  context.moveTo(...pixelOf(a, camera));
  context.lineTo(...pixelOf(b, camera));
  context.stroke();
}

/** A flat outline cut off at the plane just before the camera. */
function inFront(corners: readonly Vector[], camera: Camera): Vector[] {
  return corners.flatMap((corner, n) => {
    const next = corners[(n + 1) % corners.length] ?? corner;
    const [depth, nextDepth] = [depthM(corner, camera), depthM(next, camera)];
    const kept = depth >= NEAR_M ? [corner] : [];
    if (depth >= NEAR_M === nextDepth >= NEAR_M) return kept;
    return [...kept, between(corner, next, (NEAR_M - depth) / (nextDepth - depth))];
  });
}
