import type { Actor } from "@/server/domain/access/relation";
import type { Place } from "./angles";
import { MEASURES, type MeasureKind, type PointFrame } from "./measure-kind";
import type { TakenMeasure } from "./measure-refusal";

/** A measure as it was sent. */
export type FirstMeasure = TakenMeasure & { id: string; clipId: string; checkpointId: string | null };

/** The frames on which points of each sort were placed. */
export type FramesOfPoints = { here: number } & Partial<Record<Exclude<PointFrame, "here">, number>>;

/** The frames of a measure, which is all that a coach who measures it a second time is shown of it. */
export function framesOf({
  kind,
  frame,
  points,
}: Pick<FirstMeasure, "kind" | "frame" | "points">): FramesOfPoints {
  const asked = MEASURES[kind].points;
  const known = asked.flatMap(({ on }, index) => {
    const placed = points[index]?.frame;
    return on === "here" || placed === undefined ? [] : [[on, placed] as const];
  });
  return { here: frame, ...Object.fromEntries(known) };
}

/**
 * A measure taken a second time on the same frames, under the same checkpoint, with new points; null when they are not
 * as many as its kind asks for. Only a held finish has a last frame of its own.
 */
export function repeatedOn(
  first: FirstMeasure,
  again: { points: readonly Place[]; untilFrame: number | null },
): RepeatedMeasure | null {
  const { id, kind, clipId, checkpointId, frame } = first;
  if (again.points.length !== MEASURES[kind].points.length) return null;
  const points = again.points.map(({ x, y }, index) => ({
    frame: first.points[index]?.frame ?? frame,
    x,
    y,
  }));
  const untilFrame = kind === "finish_hold" ? again.untilFrame : null;
  return { id, kind, clipId, checkpointId, frame, untilFrame, points };
}

/** A second measure before its value is known. */
export interface RepeatedMeasure {
  id: string;
  kind: MeasureKind;
  clipId: string;
  checkpointId: string | null;
  frame: number;
  untilFrame: number | null;
  points: (Place & { frame: number })[];
}

/** Whether a person may take back a request for a second measure: who asked for it, or an admin. */
export function mayWithdraw(
  { askedByPersonId }: { askedByPersonId: string },
  { personId, roles }: Pick<Actor, "personId" | "roles">,
): boolean {
  return askedByPersonId === personId || roles.includes("admin");
}
