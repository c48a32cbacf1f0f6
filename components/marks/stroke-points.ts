import { DRAFT_LIMITS, type Place } from "@/server/domain/reviews/draft";

/**
 * A stroke as it is kept: points nearer together than a step are left out (its ends stay), to a tenth of a pixel, and
 * never more than a draft may hold.
 * @param step in the units of the points
 */
export function keptStroke(points: readonly Place[], step: number): Place[] {
  const last = points.at(-1);
  if (!last) return [];
  const kept: Place[] = [];
  for (const point of points.slice(0, -1)) {
    const before = kept.at(-1);
    if (!before || distance(before, point) >= step) kept.push(point);
  }
  return [...evenly(kept, DRAFT_LIMITS.strokePoints - 1), last].map(({ x, y }) => ({
    x: tenth(x),
    y: tenth(y),
  }));
}

const distance = (a: Place, b: Place) => Math.hypot(b.x - a.x, b.y - a.y);
const tenth = (value: number) => Math.round(value * 10) / 10;

/** At most so many of the points, evenly from the first on. */
function evenly(points: readonly Place[], most: number): readonly Place[] {
  if (points.length <= most) return points;
  return Array.from(
    { length: most },
    (_, index) => points[Math.floor((index * points.length) / most)],
  ).filter((point) => point !== undefined);
}
