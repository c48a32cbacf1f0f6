"use client";
import type { StageGeometry } from "@/components/clips/stage";
import { guideShapes } from "@/components/marks/guide-shapes";
import { MarksDrawn } from "@/components/marks/marks-drawn";
import { PencilOverlay } from "@/components/marks/pencil-overlay";
import { ShapeDrawn } from "@/components/marks/shape-drawn";
import { measureShapes } from "@/components/measures/measure-shapes";
import { MeasuresDrawn } from "@/components/measures/measures-drawn";
import { PointsOverlay } from "@/components/measures/points-overlay";
import type { PointsInHand } from "@/components/measures/use-points-in-hand";
import type { MeasuredPoint } from "@/server/domain/reviews/draft";
import { PictureSent } from "./picture-sent";
import { measureOutcome, outcomeOnPicture } from "./picture-words";
import type { PictureTools } from "./use-picture-tools";

/** What is measured and drawn on the clip in hand, and the tool that is making more of it: children of the stage's `svg`. */
export function PictureOverlay({ tools, stage }: { tools: PictureTools; stage: StageGeometry }) {
  const { room, draft, clip, player, tool, points, pencil } = tools;
  const inHand = tool && "id" in tool ? tool.id : null;
  const isOther = (row: { id: string; clipId: string }) => row.clipId === clip.id && row.id !== inHand;
  const measures = draft.document.measures
    .filter(isOther)
    .map((row) => ({ ...row, words: outcomeOnPicture(measureOutcome(row, { room, clip })) }));
  const marks = draft.document.marks.filter(isOther);
  return (
    <>
      <PictureSent room={room} clipId={clip.id} frame={player.frame} stage={stage} />
      <MarksDrawn marks={marks} frame={player.frame} stage={stage} />
      <MeasuresDrawn measures={measures} frame={player.frame} stage={stage} />
      {points ? <BeingMade tools={tools} hand={points} stage={stage} /> : null}
      {points ? <PointsOverlay hand={points} stage={stage} /> : null}
      {pencil ? <PencilOverlay pencil={pencil} stage={stage} /> : null}
    </>
  );
}

/** What the points come to so far, the one in hand among them. */
function BeingMade(props: { tools: PictureTools; hand: PointsInHand; stage: StageGeometry }) {
  const { tools, hand, stage } = props;
  const { tool, draft, player } = tools;
  const points = pointsSoFar(hand);
  if (tool?.kind === "measure") {
    const measure = { kind: tool.measure, frame: tool.frame, points };
    return <Shapes shapes={measureShapes(measure, player.frame, stage)} stage={stage} />;
  }
  if (tool?.kind !== "guide" || player.frame !== tool.frame) return null;
  const text = draft.document.marks.find((row) => row.id === tool.id)?.text ?? "";
  const shapes = guideShapes({ guide: tool.guide, points, text }, stage);
  return (
    <Shapes shapes={text === "" ? shapes.filter(({ kind }) => kind !== "words") : shapes} stage={stage} />
  );
}

function Shapes({ shapes, stage }: { shapes: ReturnType<typeof guideShapes>; stage: StageGeometry }) {
  return (
    <>
      {shapes
        .filter((shape) => shape.kind !== "dot")
        .map((shape, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the shapes are drawn as one
          <ShapeDrawn key={index} shape={shape} stage={stage} />
        ))}
    </>
  );
}

function pointsSoFar({ placing, held, player }: PointsInHand): MeasuredPoint[] {
  const placed = placing.placed.map((point, index) =>
    held?.index === index ? { ...point, ...held.at } : point,
  );
  const coming = held?.index === null ? held.at : placing.cross;
  return coming ? [...placed, { frame: player.inHand, ...coming }] : placed;
}
