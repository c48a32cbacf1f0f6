import { GUIDE_ASKS } from "@/components/marks/guide-asks";
import { beginPlacing, type Placing } from "@/components/measures/placing";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import type { DeliveryEvent } from "@/server/domain/mechanics/delivery";
import type { MarkGuide } from "@/server/domain/mechanics/mark-guide";
import { MEASURES, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import type { DraftMark, DraftMeasure, MeasuredPoint } from "@/server/domain/reviews/draft";
import type { ClipPlace } from "./room-edits";

/** What a measure or mark being made is of. */
interface OfRow extends ClipPlace {
  id: string;
  checkpointId: string | null;
}

/** What is in hand on the picture. */
export type PictureTool =
  /** Which measure, or which guide, is still to be said. */
  | { kind: "choose"; of: "measures" | "marks" }
  /** A measure that the clip does not allow, and why. */
  | { kind: "refused"; sentence: string }
  | (OfRow & { kind: "measure"; measure: MeasureKind; placing: Placing })
  /** A held finish: from its frame to one that is stepped to. */
  | (OfRow & { kind: "hold" })
  | (OfRow & { kind: "guide"; guide: Exclude<MarkGuide, "pencil">; placing: Placing })
  | (OfRow & { kind: "pencil" });

/** Begins to take a measure on a frame; `standing` are points of a straight-standing frame that are placed already. */
export function measureTool(
  measure: MeasureKind,
  of: OfRow,
  standing: readonly MeasuredPoint[],
): PictureTool {
  if (measure === "finish_hold") return { ...of, kind: "hold" };
  const placing = beginPlacing(MEASURES[measure].points, { here: of.frame }, standing);
  return { ...of, kind: "measure", measure, placing };
}

/** Begins to draw a mark on a frame. */
export function markTool(guide: MarkGuide, of: OfRow): PictureTool {
  if (guide === "pencil") return { ...of, kind: "pencil" };
  return { ...of, kind: "guide", guide, placing: beginPlacing(GUIDE_ASKS[guide], { here: of.frame }) };
}

/** Takes a measure in hand again, to move its points; null for one without points. */
export function measureInHand(row: DraftMeasure): PictureTool | null {
  if (row.points.length === 0) return null;
  const placing = beginPlacing(MEASURES[row.kind].points, { here: row.frame }, row.points);
  return { ...ofRow(row), kind: "measure", measure: row.kind, placing };
}

/** Takes a mark in hand again, to move its points; null for a stroke, which is drawn anew instead. */
export function markInHand(row: DraftMark): PictureTool | null {
  const { guide, frame } = row;
  if (guide === "pencil") return null;
  const points = row.points.map((point) => ({ frame, ...point }));
  return {
    ...ofRow(row),
    kind: "guide",
    guide,
    placing: beginPlacing(GUIDE_ASKS[guide], { here: frame }, points),
  };
}

const ofRow = ({ id, checkpointId, clipId, frame }: OfRow): OfRow => ({ id, checkpointId, clipId, frame });

/** The measure that a tool has come to with these points. */
export function measureMade(
  tool: OfRow & { measure: MeasureKind },
  points: readonly MeasuredPoint[],
): DraftMeasure {
  return { ...ofRow(tool), kind: tool.measure, untilFrame: null, points: [...points] };
}

/** The mark that a tool has come to with these points; what it says and how long it shows stays from before. */
export function markMade(
  tool: OfRow & { guide: MarkGuide },
  points: readonly { x: number; y: number }[],
  before: DraftMark | null,
): DraftMark {
  const places = points.map(({ x, y }) => ({ x, y }));
  const kept = { untilFrame: before?.untilFrame ?? null, text: before?.text ?? "" };
  return { ...ofRow(tool), guide: tool.guide, points: places, ...kept };
}

/**
 * The checkpoint that a measure or guide chosen by itself most likely belongs to: one that names it, judged on the moment
 * in sight before any other. None gives null.
 */
export function likelyCheckpoint(
  checkpoints: readonly Checkpoint[],
  names: (checkpoint: Checkpoint) => boolean,
  events: readonly DeliveryEvent[],
): string | null {
  const fitting = checkpoints.filter((each) => each.active && names(each));
  return (fitting.find((each) => events.includes(each.event)) ?? fitting[0])?.id ?? null;
}
