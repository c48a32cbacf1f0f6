import { MEASURES, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import type { DraftMark, DraftMeasure, MeasuredPoint } from "@/server/domain/reviews/draft";

/* Measures and marks that are whole; a test changes what it is about. */

/** A front knee bent by 40 degrees on frame 108 of a clip from a side. */
export const knee = (changes: Partial<DraftMeasure> = {}): DraftMeasure => {
  const frame = changes.frame ?? 108;
  return {
    ...{ id: "m1", kind: "front_knee_flexion", checkpointId: "front-knee-bent", clipId: "side" },
    ...{ frame, untilFrame: null, points: kneePoints(40, frame) },
    ...changes,
  };
};

/** The points of a knee bent by an angle in degrees; `lengthPx` is that of thigh and shank. */
export function kneePoints(flexionDeg: number, frame = 108, lengthPx = 100): MeasuredPoint[] {
  const bent = (flexionDeg * Math.PI) / 180;
  const ankle = { x: 200 + lengthPx * Math.sin(bent), y: 150 + lengthPx * Math.cos(bent) };
  return [
    { frame, x: 200, y: 150 - lengthPx },
    { frame, x: 200, y: 150 },
    { frame, ...ankle },
  ];
}

/** A finish that is held from frame 144 to frame 174. */
export const finish = (changes: Partial<DraftMeasure> = {}): DraftMeasure => ({
  ...{ id: "m2", kind: "finish_hold", checkpointId: "balanced-finish", clipId: "side" },
  ...{ frame: 144, untilFrame: 174, points: [] },
  ...changes,
});

/** A measure of any kind, its points spread over the picture and on frames they may be on. */
export function spread(kind: MeasureKind, clipId: string, frame = 100): DraftMeasure {
  const points = MEASURES[kind].points.map(({ on }, index) => ({
    ...{ x: 100 + 37 * index, y: 80 + 53 * ((index * 2) % 5) },
    frame: on === "here" ? frame : frame - 60,
  }));
  const untilFrame = kind === "finish_hold" ? frame + 30 : null;
  return { id: `m_${kind}`, kind, checkpointId: null, clipId, frame, untilFrame, points };
}

/** A level at the shoulders on frame 108. */
export const levelMark = (changes: Partial<DraftMark> = {}): DraftMark => ({
  ...{ id: "d1", checkpointId: "elbow-shoulder-height", clipId: "side", frame: 108, untilFrame: null },
  guide: "level",
  points: [
    { x: 180, y: 120 },
    { x: 240, y: 118 },
  ],
  text: "",
  ...changes,
});

/** A note on the picture, on frames 100 to 110. */
export const noteMark = (changes: Partial<DraftMark> = {}): DraftMark => ({
  ...levelMark({ id: "d2", checkpointId: null, frame: 100, untilFrame: 110, guide: "note" }),
  points: [{ x: 300, y: 90 }],
  text: "Glove here",
  ...changes,
});
