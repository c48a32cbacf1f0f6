import { getStroke } from "perfect-freehand";
import type { Place } from "@/server/domain/reviews/draft";

/**
 * The outline of a stroke of the pencil as the `d` of a path, in the units of its points.
 * @param widthPx how thick it is at most
 */
export function strokePath(points: readonly Place[], widthPx: number): string {
  const outline = getStroke([...points], { size: widthPx, thinning: 0.35, smoothing: 0.5, streamline: 0.3 });
  const [first, ...others] = outline;
  if (!first) return "";
  const word = ([x, y]: readonly number[]) => `${round(x)} ${round(y)}`;
  // From the middle of one side to the middle of the next: the outline has no corners.
  const curves = others.map((point, index) => {
    const next = others[index + 1] ?? first;
    return `Q${word(point)} ${word(middle(point, next))}`;
  });
  return `M${word(first)}${curves.join("")}Z`;
}

const round = (value = 0) => Math.round(value * 10) / 10;
const middle = (a: readonly number[], b: readonly number[]) => [
  ((a[0] ?? 0) + (b[0] ?? 0)) / 2,
  ((a[1] ?? 0) + (b[1] ?? 0)) / 2,
];
