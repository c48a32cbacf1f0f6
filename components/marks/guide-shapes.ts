import type { DraftMark, Place } from "@/server/domain/reviews/draft";

/** One thing to draw, in source pixels of the upright picture. */
export type MarkShape =
  | { kind: "line"; from: Place; to: Place; isDashed: boolean }
  | { kind: "circle"; centre: Place; radiusPx: number }
  /** A small dot of the same size at every zoom. */
  | { kind: "dot"; at: Place }
  /** The angle between two limbs: from one to the other, always the shorter way round. */
  | { kind: "arc"; centre: Place; radiusPx: number; from: Place; to: Place; isClockwise: boolean }
  | { kind: "stroke"; points: readonly Place[] }
  | { kind: "words"; at: Place; text: string };

/** The picture that a guide must fit into. */
export interface PictureSize {
  widthPx: number;
  heightPx: number;
}

type Fit = (points: readonly Place[], size: PictureSize, text: string) => MarkShape[];

/**
 * What a mark draws through its points: a plumb line from edge to edge, the plate line on to both edges, the line of the
 * shoulders with a true level through its middle, a ring through a point of its edge, two limbs with the angle between.
 * Points that fall together draw only what can still be said of them, a mark without points nothing.
 */
export function guideShapes(
  mark: Pick<DraftMark, "guide" | "points" | "text">,
  size: PictureSize,
): MarkShape[] {
  return mark.points.length === 0 ? [] : FITS[mark.guide](mark.points, size, mark.text);
}

const FITS: Readonly<Record<DraftMark["guide"], Fit>> = {
  plumb: ([at], { heightPx }) =>
    at ? [line({ x: at.x, y: 0 }, { x: at.x, y: heightPx }), { kind: "dot", at }] : [],
  plate_line: (points, size) => [...edgeToEdge(points, size), ...dots(points)],
  level: (points, size) => [...joined(points), ...level(points, size), ...dots(points)],
  ring: ([centre, edge]) => {
    if (!centre) return [];
    const middle: MarkShape = { kind: "dot", at: centre };
    return edge ? [{ kind: "circle", centre, radiusPx: distance(centre, edge) }, middle] : [middle];
  },
  limbs: (points) => [...joined(points), ...angle(points), ...dots(points)],
  pencil: (points) => (points.length > 1 ? [{ kind: "stroke", points }] : dots(points)),
  note: ([at], _size, text) =>
    at
      ? [
          { kind: "dot", at },
          { kind: "words", at, text },
        ]
      : [],
};

const line = (from: Place, to: Place, isDashed = false): MarkShape => ({ kind: "line", from, to, isDashed });
const dots = (points: readonly Place[]): MarkShape[] => points.map((at) => ({ kind: "dot", at }));
const distance = (a: Place, b: Place) => Math.hypot(b.x - a.x, b.y - a.y);

function joined(points: readonly Place[]): MarkShape[] {
  return points.slice(1).map((to, index) => line(points[index] ?? to, to));
}

/** The line through two points on to the edges of the picture; one point, or two at one place, give none. */
function edgeToEdge([a, b]: readonly Place[], { widthPx, heightPx }: PictureSize): MarkShape[] {
  if (!a || !b || distance(a, b) === 0) return [];
  const along = { x: b.x - a.x, y: b.y - a.y };
  const entries = [crossings(a.x, along.x, widthPx), crossings(a.y, along.y, heightPx)];
  // Through points outside the picture the line may miss it: then it is drawn between them alone.
  const from = Math.min(0, Math.max(...entries.map(([enter]) => enter)));
  const to = Math.max(1, Math.min(...entries.map(([, leave]) => leave)));
  const at = (share: number): Place => ({ x: a.x + along.x * share, y: a.y + along.y * share });
  return [line(at(from), at(to))];
}

/** Where a line enters and leaves a picture along one axis, as shares of the way between its points. */
function crossings(start: number, along: number, lengthPx: number): [number, number] {
  if (along === 0) return [-Infinity, Infinity];
  const ends = [-start / along, (lengthPx - start) / along];
  return [Math.min(...ends), Math.max(...ends)];
}

/** A true level through the middle of a line, half as long again as the line, as far as the picture goes. */
function level([a, b]: readonly Place[], { widthPx }: PictureSize): MarkShape[] {
  if (!a || !b) return [];
  const reachPx = distance(a, b) * 0.75;
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const within = (x: number) => Math.min(widthPx, Math.max(0, x));
  return [
    line(
      { x: within(middle.x - reachPx), y: middle.y },
      { x: within(middle.x + reachPx), y: middle.y },
      true,
    ),
  ];
}

/** The arc between two limbs that meet in the second point, at a third of the shorter one. */
function angle([a, joint, b]: readonly Place[]): MarkShape[] {
  if (!a || !joint || !b) return [];
  const radiusPx = Math.min(distance(joint, a), distance(joint, b)) / 3;
  if (radiusPx === 0) return [];
  const toward = (end: Place): Place => {
    const share = radiusPx / distance(joint, end);
    return { x: joint.x + (end.x - joint.x) * share, y: joint.y + (end.y - joint.y) * share };
  };
  const cross = (a.x - joint.x) * (b.y - joint.y) - (a.y - joint.y) * (b.x - joint.x);
  return [{ kind: "arc", centre: joint, radiusPx, from: toward(a), to: toward(b), isClockwise: cross > 0 }];
}
