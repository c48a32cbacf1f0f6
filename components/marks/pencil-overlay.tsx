"use client";
import type { PointerEvent } from "react";
import type { StageGeometry } from "@/components/clips/stage";
import measures from "@/components/measures/measures.module.css";
import { PointCross } from "@/components/measures/point-cross";
import { guideShapes } from "./guide-shapes";
import { ShapeDrawn } from "./shape-drawn";
import type { Pencil } from "./use-pencil";

/** Moves on the screen that are too small to add to a stroke. Common practice, no source. */
const STEP_PX = 1.5;

/** The stroke in hand on the picture, which takes the presses that draw it: children of the stage's `svg`. */
export function PencilOverlay({ pencil, stage }: { pencil: Pencil; stage: StageGeometry }) {
  if (stage.pxPerSource === 0) return null;
  const { points, cross } = pencil;
  const step = STEP_PX / stage.pxPerSource;
  const placeOf = (event: PointerEvent) => stage.toSource(event.clientX, event.clientY);
  const down = (event: PointerEvent<SVGRectElement>) => {
    if (event.button !== 0 || !event.isPrimary) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    pencil.press(placeOf(event));
  };
  return (
    <>
      <rect
        className={measures.surface}
        width={stage.widthPx}
        height={stage.heightPx}
        onPointerDown={down}
        onPointerMove={(event) => pencil.draw(placeOf(event), step)}
        onPointerUp={() => pencil.lift(step)}
        onPointerCancel={pencil.drop}
        data-points=""
      />
      {guideShapes({ guide: "pencil", points: [...points], text: "" }, stage).map((shape, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the stroke is drawn as one
        <ShapeDrawn key={index} shape={shape} stage={stage} />
      ))}
      {cross ? <PointCross at={cross} stage={stage} /> : null}
    </>
  );
}
