"use client";
import { useState } from "react";
import type { MarkedFrames } from "@/components/clips/event-strip";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import { type Pencil, usePencil } from "@/components/marks/use-pencil";
import { goBack, goOn, isAllPlaced } from "@/components/measures/placing";
import { usePlacingKeys } from "@/components/measures/use-placing-keys";
import { type PointsInHand, usePointsInHand } from "@/components/measures/use-points-in-hand";
import type { ClipView, RoomView } from "@/server/api/reviews/shapes";
import type { MarkGuide } from "@/server/domain/mechanics/mark-guide";
import { MEASURES, type MeasureKind } from "@/server/domain/mechanics/measure-kind";
import { viewProblem } from "@/server/domain/mechanics/measure-refusal";
import { DRAFT_LIMITS, type DraftMark, type DraftMeasure } from "@/server/domain/reviews/draft";
import {
  likelyCheckpoint,
  markInHand,
  markMade,
  markTool,
  measureInHand,
  measureMade,
  measureTool,
  type PictureTool,
} from "./picture-tool";
import type { ClipPlace } from "./room-edits";
import { type OnPicture, type PictureChange, standingPoints } from "./room-marks-edits";
import { type PictureDraft, type PictureUndo, usePictureUndo } from "./use-picture-undo";
import { backToClip } from "./use-row-in-hand";

/** What is measured and drawn on. */
export interface PictureUse {
  room: Pick<RoomView, "checkpoints" | "athlete" | "measureErrors" | "marks" | "measurements">;
  draft: PictureDraft;
  clip: ClipView;
  player: ClipPlayer;
  /** The moments marked on the clip. */
  events: MarkedFrames;
}

/** The means to measure and to draw on the picture. */
export interface PictureTools extends PictureUse {
  tool: PictureTool | null;
  points: PointsInHand | null;
  pencil: Pencil | null;
  undo: PictureUndo;
  /** Lets which measure, or which guide, be chosen. */
  choose: (of: "measures" | "marks") => void;
  /** Begins a measure on the frame in sight; without a checkpoint it goes to the likeliest. Says why where it cannot be. */
  measure: (kind: MeasureKind, checkpointId?: string) => void;
  /** Begins a mark on the frame in sight; without a checkpoint it goes to the likeliest. */
  mark: (guide: MarkGuide, checkpointId?: string) => void;
  openMeasure: (row: DraftMeasure) => void;
  openMark: (row: DraftMark) => void;
  change: (change: PictureChange) => void;
  /** The held finish ends on the frame in sight. */
  endHold: () => void;
  putDown: () => void;
}

/** Holds the tool on one clip's picture, and what it has made in the draft. */
export function usePictureTools(use: PictureUse): PictureTools {
  const { room, draft, clip, player, events } = use;
  const [held, setTool] = useState<PictureTool | null>(null);
  const tool = held && (!("clipId" in held) || held.clipId === clip.id) ? held : null;
  const undo = usePictureUndo(draft, {
    back: () => stepWithin(tool, setTool, "back"),
    on: () => stepWithin(tool, setTool, "on"),
    after: (change) => setTool(toolAfter(change, tool)),
  });
  const putDown = () => {
    if (tool?.kind === "guide" && tool.guide === "note") dropEmptyNote(draft.document, tool.id, undo.make);
    setTool(null);
  };
  const begin = (next: PictureTool | null) => {
    putDown();
    setTool(next);
    player.pause();
    backToClip();
  };
  const onFrame = Object.entries(events).flatMap(([event, frame]) =>
    frame === player.inHand ? [event as keyof MarkedFrames] : [],
  );
  const newRow = (names: Parameters<typeof likelyCheckpoint>[1], checkpointId: string | undefined) => ({
    id: crypto.randomUUID(),
    checkpointId: checkpointId ?? likelyCheckpoint(room.checkpoints, names, onFrame),
    clipId: clip.id,
    frame: player.inHand,
  });

  const points = usePointsInHand({
    player,
    placing: tool && "placing" in tool ? tool.placing : null,
    onPlacing: (placing) => setTool((now) => (now && "placing" in now ? { ...now, placing } : now)),
    onPoints: (placed) => {
      const change = tool && changeBy(tool, placed, draft.document);
      if (change) undo.make(change);
    },
    onLeave: putDown,
    suggested: {
      standing: events.first_movement ?? 0,
      ...(events.peak_knee_height === undefined ? {} : { before: events.peak_knee_height }),
    },
  });
  const pencil = usePencil({
    player,
    isOn: tool?.kind === "pencil",
    onStroke: (stroke) => {
      if (tool?.kind !== "pencil") return;
      const row = markMade({ ...tool, guide: "pencil", frame: player.inHand }, stroke, null);
      undo.make({ of: "marks", id: row.id, act: "stroke", before: null, after: row });
      setTool({ ...tool, id: crypto.randomUUID() });
    },
    onLeave: putDown,
  });
  const endHold = () => {
    if (tool?.kind !== "hold" || player.inHand < tool.frame) return;
    const made = measureMade({ ...tool, measure: "finish_hold" }, []);
    const after = { ...made, untilFrame: player.inHand };
    undo.make({ of: "measures", id: tool.id, act: "span", before: null, after });
    setTool(null);
  };
  usePlacingKeys(
    tool?.kind === "hold" ? { isMirrored: false, take: endHold, back: putDown, leave: putDown } : null,
  );

  const openMeasure = (row: DraftMeasure) => {
    player.show(row.frame);
    begin(measureInHand(row));
  };

  return {
    ...use,
    ...{ tool, points, pencil, undo, endHold, putDown },
    change: undo.make,
    choose: (of) => begin({ kind: "choose", of }),
    measure: (kind, checkpointId) => {
      const sentence =
        viewProblem(kind, clip.view) ?? fullProblem(draft.document.measures, DRAFT_LIMITS.measures);
      if (sentence !== null) return begin({ kind: "refused", sentence });
      const taken = takenAlready(draft.document, kind, { clipId: clip.id, frame: player.inHand });
      if (taken) return openMeasure(taken);
      const asked = MEASURES[kind].points;
      const standing = standingPoints(draft.document, clip.id, asked, (each) => MEASURES[each].points);
      begin(
        measureTool(
          kind,
          newRow((each) => each.measure === kind, checkpointId),
          standing,
        ),
      );
    },
    mark: (guide, checkpointId) => {
      const sentence = fullProblem(draft.document.marks, DRAFT_LIMITS.marks);
      if (sentence !== null) return begin({ kind: "refused", sentence });
      begin(
        markTool(
          guide,
          newRow((each) => each.guide === guide, checkpointId),
        ),
      );
    },
    openMeasure,
    openMark: (row) => {
      player.show(row.frame);
      begin(markInHand(row));
    },
  };
}

/** A frame is measured once in a review: what was taken is moved, not taken beside it. */
function takenAlready(
  { measures }: OnPicture,
  kind: MeasureKind,
  place: ClipPlace,
): DraftMeasure | undefined {
  return measures.find(
    (row) =>
      row.kind === kind && row.clipId === place.clipId && row.frame === place.frame && row.points.length > 0,
  );
}

function fullProblem(rows: readonly unknown[], most: number): string | null {
  return rows.length < most ? null : `There are ${most} already, which is the most for one review.`;
}

/** What placing all its points, or moving one of them, does to the draft. */
function changeBy(
  tool: PictureTool,
  placed: Parameters<typeof measureMade>[1],
  { measures, marks }: OnPicture,
): PictureChange | null {
  if (tool.kind === "measure") {
    const { id } = tool;
    const before = measures.find((row) => row.id === id) ?? null;
    return { of: "measures", id, act: handAt(placed, before), before, after: measureMade(tool, placed) };
  }
  if (tool.kind !== "guide") return null;
  const before = marks.find((row) => row.id === tool.id) ?? null;
  const after = markMade(tool, placed, before);
  return { of: "marks", id: tool.id, act: handAt(placed, before), before, after };
}

/** The part of a row that the hand is at: the point that was moved. */
function handAt(
  placed: readonly { x: number; y: number }[],
  before: { points: { x: number; y: number }[] } | null,
) {
  const moved = placed.findIndex((point, index) => {
    const was = before?.points[index];
    return was?.x !== point.x || was.y !== point.y;
  });
  return `point ${moved}`;
}

/** While points are still coming, undo and redo go a point back and on. @returns whether they did */
function stepWithin(
  tool: PictureTool | null,
  setTool: (tool: PictureTool) => void,
  way: "back" | "on",
): boolean {
  if (!tool || !("placing" in tool) || isAllPlaced(tool.placing)) return false;
  const placing = way === "back" ? goBack(tool.placing) : goOn(tool.placing);
  if (placing === tool.placing) return false;
  setTool({ ...tool, placing });
  return true;
}

/** After undo or redo the tool holds what the row has become; a row that is gone leaves no tool. */
function toolAfter(change: PictureChange, tool: PictureTool | null): PictureTool | null {
  if (!tool || !("id" in tool) || tool.id !== change.id) return tool?.kind === "pencil" ? tool : null;
  if (change.after === null) return null;
  return change.of === "measures" ? measureInHand(change.after) : markInHand(change.after);
}

function dropEmptyNote({ marks }: OnPicture, id: string, make: (change: PictureChange) => void): void {
  const note = marks.find((row) => row.id === id);
  if (note?.text.trim() === "") make({ of: "marks", id, act: "left empty", before: note, after: null });
}
