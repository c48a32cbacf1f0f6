import type { MeasurePoint, PointFrame } from "@/server/domain/mechanics/measure-kind";
import type { MeasuredPoint, Place } from "@/server/domain/reviews/draft";

/* Points being placed one after another: each function gives a new state and leaves the old one as it was. */

/** The frames, counted from 0, on which points of each sort lie; one that is not there yet is chosen with its first point. */
export type PointFrames = Readonly<Partial<Record<PointFrame, number>>>;

/** Points being placed, in the order in which they are asked for. */
export interface Placing {
  asked: readonly MeasurePoint[];
  frames: PointFrames;
  /** Of these frames, those that were known from the beginning. */
  given: PointFrames;
  placed: readonly MeasuredPoint[];
  /** Points gone back on, the latest last: going on places them again. */
  undone: readonly MeasuredPoint[];
  /** The cross that the keys move, before its point is placed; null while the keys are the clip's or move a placed point. */
  cross: Place | null;
  /** The placed point that the keys move, by its place in the order; null for none. */
  selected: number | null;
}

/** The corners that a point stays within, both included, in source pixels. */
export interface Bounds {
  widthPx: number;
  heightPx: number;
}

/**
 * Begins to place points.
 * @param frames the frames that are known, such as the one that is measured
 * @param placed points that are there already, the first ones asked for
 */
export function beginPlacing(
  asked: readonly MeasurePoint[],
  frames: PointFrames,
  placed: readonly MeasuredPoint[] = [],
): Placing {
  const known = placed.map((point, index) => [asked[index]?.on, point.frame]);
  return {
    asked,
    frames: { ...frames, ...Object.fromEntries(known) },
    given: frames,
    placed,
    undone: [],
    cross: null,
    selected: placed.length > 0 && placed.length === asked.length ? placed.length - 1 : null,
  };
}

/** The point that is asked for next, or null when all are placed. */
export function nextAsked({ asked, placed }: Placing): MeasurePoint | null {
  return asked[placed.length] ?? null;
}

/** Whether every point is placed. */
export function isAllPlaced({ asked, placed }: Placing): boolean {
  return placed.length >= asked.length;
}

/** The frame on which the next point must lie; null when it is free to choose, or none is asked for. */
export function nextFrame(placing: Placing): number | null {
  const next = nextAsked(placing);
  return next === null ? null : (placing.frames[next.on] ?? null);
}

/** Whether the next point may lie on this frame: on the one its sort lies on, a moment to compare with before that measured. */
export function mayPlaceOn(placing: Placing, frame: number): boolean {
  const next = nextAsked(placing);
  if (next === null) return false;
  const must = placing.frames[next.on];
  if (must !== undefined) return must === frame;
  return next.on !== "before" || frame < (placing.frames.here ?? Number.POSITIVE_INFINITY);
}

/** Whether the arrow keys are for a point; else they are the clip's, to step to a frame. */
export function movesPoint(placing: Placing): boolean {
  return placing.cross !== null || placing.selected !== null || nextFrame(placing) !== null;
}

/**
 * Places the next point, on this frame, and gives it to the keys; they are the clip's again where the point after it is
 * to be looked for on another frame. Where it may not lie (see {@link mayPlaceOn}) nothing changes.
 */
export function placeNext(placing: Placing, at: Place, frame: number): Placing {
  const next = nextAsked(placing);
  if (next === null || !mayPlaceOn(placing, frame)) return placing;
  const placed = [...placing.placed, { frame, x: at.x, y: at.y }];
  const after = {
    ...placing,
    placed,
    frames: { ...placing.frames, [next.on]: frame },
    undone: [],
    cross: null,
  };
  const isSought = !isAllPlaced(after) && nextFrame(after) === null;
  return { ...after, selected: isSought ? null : placed.length - 1 };
}

/** Moves a placed point to another place on its frame, and gives it to the keys. */
export function movePlaced(placing: Placing, index: number, to: Place): Placing {
  const placed = placing.placed.map((point, at) => (at === index ? { ...point, x: to.x, y: to.y } : point));
  return { ...placing, placed, selected: index, cross: null };
}

/** Moves what the keys move by some source pixels: the cross, or the selected point. */
export function nudge(placing: Placing, x: number, y: number, bounds: Bounds): Placing {
  const within = (at: Place): Place => ({
    x: Math.min(bounds.widthPx, Math.max(0, at.x + x)),
    y: Math.min(bounds.heightPx, Math.max(0, at.y + y)),
  });
  if (placing.cross) return { ...placing, cross: within(placing.cross) };
  const point = placing.selected === null ? undefined : placing.placed[placing.selected];
  if (!point || placing.selected === null) return placing;
  return movePlaced(placing, placing.selected, within(point));
}

/** Gives the keys a cross for the next point; where all are placed they have the next of the placed ones instead. */
export function takeNextInHand(placing: Placing, at: Place): Placing {
  if (!isAllPlaced(placing)) return { ...placing, cross: at, selected: null };
  const next = ((placing.selected ?? -1) + 1) % Math.max(1, placing.placed.length);
  return { ...placing, cross: null, selected: placing.placed.length === 0 ? null : next };
}

/** Takes back the point placed last; its frame is free again when no other point of its sort lies on it. */
export function goBack(placing: Placing): Placing {
  const last = placing.placed.at(-1);
  const sort = placing.asked[placing.placed.length - 1]?.on;
  if (!last || !sort) return placing;
  const placed = placing.placed.slice(0, -1);
  const isFree =
    placing.given[sort] === undefined && !placed.some((_, index) => placing.asked[index]?.on === sort);
  const { [sort]: _taken, ...others } = placing.frames;
  return {
    ...placing,
    placed,
    frames: isFree ? others : placing.frames,
    undone: [...placing.undone, last],
    cross: { x: last.x, y: last.y },
    selected: null,
  };
}

/** Places again the point that was last taken back. */
export function goOn(placing: Placing): Placing {
  const again = placing.undone.at(-1);
  if (!again) return placing;
  const after = placeNext({ ...placing, frames: framesFor(placing, again.frame) }, again, again.frame);
  return { ...after, undone: placing.undone.slice(0, -1) };
}

function framesFor(placing: Placing, frame: number): PointFrames {
  const next = nextAsked(placing);
  return next === null ? placing.frames : { ...placing.frames, [next.on]: frame };
}
