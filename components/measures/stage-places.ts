import type { StageGeometry } from "@/components/clips/stage";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import type { MeasuredPoint, Place } from "@/server/domain/reviews/draft";

/** Where on the screen a place of the picture lies now: what `toSource` turns round. */
export function toClient({ toSource }: Pick<StageGeometry, "toSource">, at: Place): { x: number; y: number } {
  const origin = toSource(0, 0);
  const one = toSource(1, 1);
  return { x: (at.x - origin.x) / (one.x - origin.x), y: (at.y - origin.y) / (one.y - origin.y) };
}

/** The place of the picture in the middle of its stage, by how far it is enlarged and shifted. */
export function middleInSight({ view, size }: Pick<ClipPlayer, "view" | "size">): Place {
  const across = 0.5 - view.x / view.zoom;
  const down = 0.5 - view.y / view.zoom;
  return { x: (view.isMirrored ? 1 - across : across) * size.widthPx, y: down * size.heightPx };
}

/** A place as it is kept: to a hundredth of a pixel, within the picture. */
export function keptPlace(at: Place, size: { widthPx: number; heightPx: number }): Place {
  const kept = (value: number, most: number) => Math.round(Math.min(most, Math.max(0, value)) * 100) / 100;
  return { x: kept(at.x, size.widthPx), y: kept(at.y, size.heightPx) };
}

/** The point on this frame nearest to a place and no farther than a reach, by its index; null when there is none. */
export function pointNear(
  points: readonly MeasuredPoint[],
  frame: number,
  at: Place,
  reach: number,
): number | null {
  const near = points
    .map((point, index) => ({ index, away: Math.hypot(point.x - at.x, point.y - at.y), frame: point.frame }))
    .filter((each) => each.frame === frame && each.away <= reach)
    .sort((a, b) => a.away - b.away);
  return near[0]?.index ?? null;
}
