import type { SKRSContext2D } from "@napi-rs/canvas";
import type { Pixel } from "./camera";
import { blend, type Colour, ink } from "./palette";

/** A round spot in the picture, in pixels. */
export type Spot = { readonly at: Pixel; readonly radiusPx: number };

const AROUND = Array.from({ length: 28 }, (_, n) => {
  const angle = (n / 28) * 2 * Math.PI;
  return [Math.cos(angle), Math.sin(angle)] as const;
});

/** The outline of a sheet drawn tight around spots: two make a tapered limb. */
export function outlineAround(spots: readonly Spot[]): Pixel[] {
  const edge = spots.flatMap(({ at, radiusPx }) =>
    AROUND.map(([x, y]): Pixel => [at[0] + x * radiusPx, at[1] + y * radiusPx]),
  );
  return convexHull(edge);
}

/** Fills a rounded body around spots, lit from above on its left: bright on that side, shaded on the other. */
export function fillRound(
  context: SKRSContext2D,
  spots: readonly Spot[],
  colour: Colour,
  shade: Colour,
): void {
  const outline = outlineAround(spots);
  const [first, last] = [spots[0], spots[spots.length - 1]];
  if (first === undefined || last === undefined) return;
  const across = litSideOf(first.at, last.at);
  const offsets = outline.map(([x, y]) => x * across[0] + y * across[1]);
  const [dim, bright] = [Math.min(...offsets), Math.max(...offsets)];
  const base = first.at[0] * across[0] + first.at[1] * across[1];
  const edgeAt = (offset: number): Pixel => [
    first.at[0] + across[0] * (offset - base),
    first.at[1] + across[1] * (offset - base),
  ];
  const gradient = context.createLinearGradient(...edgeAt(bright), ...edgeAt(dim));
  gradient.addColorStop(0, ink(blend(colour, [255, 255, 255], 0.12)));
  gradient.addColorStop(0.45, ink(colour));
  gradient.addColorStop(1, ink(blend(colour, shade, 0.4)));
  fillPath(context, outline, gradient);
  context.strokeStyle = ink(shade, 0.3);
  context.lineWidth = 0.8;
  context.stroke();
}

/** The direction across a limb that faces the light, which falls from above on the left. */
function litSideOf(from: Pixel, to: Pixel): Pixel {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const across: Pixel = [(to[1] - from[1]) / length, (from[0] - to[0]) / length];
  return across[0] * -0.5 + across[1] * -0.86 < 0 ? [-across[0], -across[1]] : across;
}

/** Fills a closed path. */
export function fillPath(
  context: SKRSContext2D,
  path: readonly Pixel[],
  fill: string | ReturnType<SKRSContext2D["createLinearGradient"]>,
): void {
  context.fillStyle = fill;
  context.beginPath();
  for (const [x, y] of path) context.lineTo(x, y);
  context.closePath();
  context.fill();
}

/** The corners of the smallest convex outline, going round (Andrew's monotone chain). */
export function convexHull(points: readonly Pixel[]): Pixel[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [...chain(sorted), ...chain(sorted.reverse())];
}

function chain(sorted: readonly Pixel[]): Pixel[] {
  const kept: Pixel[] = [];
  for (const point of sorted) {
    while (kept.length >= 2 && !turnsLeft(kept[kept.length - 2], kept[kept.length - 1], point)) kept.pop();
    kept.push(point);
  }
  return kept.slice(0, -1);
}

function turnsLeft(a: Pixel | undefined, b: Pixel | undefined, c: Pixel): boolean {
  if (a === undefined || b === undefined) return true;
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0;
}
