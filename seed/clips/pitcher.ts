import type { SKRSContext2D } from "@napi-rs/canvas";
import type { Body } from "./body";
import { type Camera, depthM, pixelOf } from "./camera";
import type { Figure, Joints } from "./figure";
import { groundHeightM } from "./ground";
import { drawHead } from "./head";
import type { Look } from "./look";
import { blend, type Colour, ink } from "./palette";
import { fillRound } from "./shapes";
import { between, cross, direction, minus, plus, times, type Vector } from "./vector";

/** A ball of flesh or cloth: where, and how thick in shares of body height. */
type Bulge = readonly [at: Vector, share: number];
type Part = { readonly depthM: number; readonly draw: () => void };

/** Draws the pitcher, far parts first, the far side fading into the shade. */
export function drawPitcher(context: SKRSContext2D, camera: Camera, figure: Figure, look: Look): void {
  drawShadow(context, camera, figure.joints, look);
  const partOf = ([bulges, colour, nearer]: Piece): Part => {
    const middleM = bulges.reduce((sum, [at]) => sum + depthM(at, camera), 0) / bulges.length;
    const behindM = middleM - depthM(figure.joints.midHip, camera);
    const fade = Math.min(0.3, Math.max(0, (behindM / look.body.heightM) * 1.6));
    const spots = bulges.map(([at, share]) => ({
      at: pixelOf(at, camera),
      radiusPx: (share * look.body.heightM * look.body.girth * camera.focalPx) / depthM(at, camera),
    }));
    return {
      depthM: middleM - nearer * look.body.heightM,
      draw: () => fillRound(context, spots, blend(colour, look.light.shade, fade), look.light.shade),
    };
  };
  const parts = piecesOf(figure.joints, look).map(partOf);
  parts.push({
    depthM: depthM(figure.joints.head, camera) - 0.02,
    draw: () => drawHead(context, camera, figure, look),
  });
  for (const part of parts.sort((a, b) => b.depthM - a.depthM)) part.draw();
}

/** Bulges of one part, its colour, and how much it stands before others as deep (share of body height). */
type Piece = readonly [bulges: readonly Bulge[], colour: Colour, nearer: number];

function piecesOf(joints: Joints, look: Look): Piece[] {
  return [
    ...trunkPieces(joints, look),
    ...legPieces("lead", joints, look),
    ...legPieces("back", joints, look),
    ...armPieces("throwing", joints, look),
    ...armPieces("glove", joints, look),
  ];
}

function trunkPieces(joints: Joints, { kit, body }: Look): Piece[] {
  const { midHip, midShoulder, neck, head } = joints;
  const beltAt = (up: number, share: number): Bulge[] =>
    beltPoints(joints, body).map((way) => [plus(between(midHip, midShoulder, up), way), share]);
  const shirt: Piece = [
    [
      [between(midShoulder, joints.gloveShoulder, 0.82), 0.044],
      [between(midShoulder, joints.throwingShoulder, 0.82), 0.044],
      [between(midShoulder, neck, 0.45), 0.04],
      ...beltAt(0.24, 0.022),
    ],
    kit.jersey,
    0.012,
  ];
  const seat: Piece = [
    [...beltAt(0.16, 0.02), [joints.leadHip, 0.057], [joints.backHip, 0.057]],
    kit.trousers,
    0.002,
  ];
  const belt: Piece = [[...beltAt(0.185, 0.016), ...beltAt(0.2, 0.016)], kit.cap, 0.02];
  const collar: Piece = [
    [
      [between(midShoulder, neck, 0.7), 0.027],
      [between(neck, head, 0.4), 0.027],
    ],
    kit.skin,
    0.008,
  ];
  return [seat, shirt, belt, collar];
}

/** The ways from the middle of the body to its sides, front and back at the belt. */
function beltPoints(joints: Joints, body: Body): Vector[] {
  const toLead = direction(minus(joints.leadHip, joints.backHip));
  const ahead = cross(toLead, direction(minus(joints.midShoulder, joints.midHip)));
  const [wide, deep] = [body.heightM * 0.07, body.heightM * 0.035];
  return [times(toLead, wide), times(ahead, deep), times(toLead, -wide), times(ahead, -deep)];
}

function legPieces(side: "lead" | "back", joints: Joints, { kit }: Look): Piece[] {
  const [hip, knee, ankle] = [joints[`${side}Hip`], joints[`${side}Knee`], joints[`${side}Ankle`]];
  const [heel, toe] = [joints[`${side}Heel`], joints[`${side}Toe`]];
  const calf = between(knee, ankle, 0.32);
  const hem = between(knee, ankle, 0.62);
  const raised = (at: Vector) => between(at, ankle, 0.32);
  return [
    [
      [
        [hem, 0.028],
        [ankle, 0.021],
      ],
      kit.socks,
      -0.002,
    ],
    [
      [
        [ankle, 0.022],
        [raised(heel), 0.021],
        [raised(between(heel, toe, 0.6)), 0.02],
        [between(toe, raised(toe), 0.5), 0.015],
      ],
      kit.shoes,
      0,
    ],
    [
      [
        [knee, 0.038],
        [calf, 0.038],
        [hem, 0.03],
      ],
      kit.trousers,
      0,
    ],
    [
      [
        [hip, 0.057],
        [between(hip, knee, 0.4), 0.052],
        [knee, 0.038],
      ],
      kit.trousers,
      0.004,
    ],
  ];
}

function armPieces(side: "throwing" | "glove", joints: Joints, { kit }: Look): Piece[] {
  const [shoulder, elbow] = [joints[`${side}Shoulder`], joints[`${side}Elbow`]];
  const [wrist, hand] = [joints[`${side}Wrist`], joints[`${side}Hand`]];
  const cuff = between(shoulder, elbow, 0.55);
  const palm = between(wrist, hand, 0.55);
  const fingers = plus(hand, times(direction(minus(hand, wrist)), 0.05));
  const upperSleeve: Bulge[] = [
    [shoulder, 0.04],
    [cuff, 0.034],
  ];
  const underSleeve: Bulge[] = [
    [cuff, 0.029],
    [elbow, 0.0245],
  ];
  const forearm: Bulge[] = [
    [elbow, 0.0245],
    [between(elbow, wrist, 0.3), 0.024],
    [wrist, 0.016],
  ];
  const bareHand: Piece = [
    [
      [wrist, 0.016],
      [palm, 0.02],
    ],
    kit.skin,
    0.016,
  ];
  const gloved: Piece = [
    [
      [wrist, 0.026],
      [hand, 0.05],
      [fingers, 0.036],
    ],
    kit.glove,
    0.022,
  ];
  return [
    [underSleeve, kit.sleeve, 0.012],
    [upperSleeve, kit.jersey, 0.016],
    [forearm, kit.skin, 0.014],
    side === "throwing" ? bareHand : gloved,
  ];
}

function drawShadow(context: SKRSContext2D, camera: Camera, joints: Joints, { light, body }: Look): void {
  const under = (at: Vector): Vector => [at[0], groundHeightM(at[0]) + 0.004, at[2]];
  const pools: readonly (readonly [Vector, number, number])[] = [
    [under(joints.midHip), 0.3, 0.7],
    [under(between(joints.leadHeel, joints.leadToe, 0.5)), 0.12, nearGround(joints.leadToe)],
    [under(between(joints.backHeel, joints.backToe, 0.5)), 0.12, nearGround(joints.backToe)],
  ];
  for (const [at, share, strength] of pools) {
    const [x, y] = pixelOf(at, camera);
    const wide = (share * body.heightM * camera.focalPx) / depthM(at, camera);
    const flat = Math.max(0.12, (camera.at[1] - at[1]) / depthM(at, camera)) * 1.2;
    context.save();
    context.translate(x, y);
    context.scale(1, flat);
    const pool = context.createRadialGradient(0, 0, 0, 0, 0, wide);
    pool.addColorStop(0, ink(light.shade, light.shadow * strength));
    pool.addColorStop(0.6, ink(light.shade, light.shadow * strength * 0.6));
    pool.addColorStop(1, ink(light.shade, 0));
    context.fillStyle = pool;
    context.fillRect(-wide, -wide, 2 * wide, 2 * wide);
    context.restore();
  }
}

function nearGround(toe: Vector): number {
  return Math.max(0, 1 - (toe[1] - groundHeightM(toe[0])) / 0.35);
}
