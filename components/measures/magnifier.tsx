"use client";
import { useEffect, useRef } from "react";
import { createPortal } from "react-dom";
import type { StageGeometry } from "@/components/clips/stage";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import type { Place } from "@/server/domain/reviews/draft";
import styles from "./measures.module.css";
import { toClient } from "./stage-places";

/** Its size on the screen, and how far it stands from the place: clear of the finger that holds the point. */
const SIZE_PX = 144;
const AWAY_PX = 64;
/** How much larger than on the stage; between 2 and 6 screen pixels to a source pixel. Common practice, no source. */
const LARGER = 5;
const SCALE = { least: 2, most: 6 };

/** What a {@link Magnifier} takes. */
export interface MagnifierProps {
  player: ClipPlayer;
  stage: StageGeometry;
  /** The place in its middle, in source pixels. */
  at: Place;
}

/** The picture around a place, enlarged, with a cross on the very place. */
export function Magnifier({ player, stage, at }: MagnifierProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { drawPicture, frame } = player;
  const { isMirrored, pxPerSource } = stage;
  const scale = Math.min(SCALE.most, Math.max(SCALE.least, pxPerSource * LARGER));
  const { x, y } = at;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another frame on the picture is drawn anew
  useEffect(() => {
    const pen = canvas.current?.getContext("2d");
    if (!canvas.current || !pen) return;
    const dots = devicePixelRatio || 1;
    canvas.current.width = SIZE_PX * dots;
    canvas.current.height = SIZE_PX * dots;
    pen.setTransform(isMirrored ? -dots : dots, 0, 0, dots, isMirrored ? SIZE_PX * dots : 0, 0);
    pen.imageSmoothingEnabled = scale < 4;
    const across = SIZE_PX / scale;
    drawPicture(pen, x - across / 2, y - across / 2, across, across, 0, 0, SIZE_PX, SIZE_PX);
    drawCross(pen);
  }, [drawPicture, frame, isMirrored, scale, x, y]);

  return createPortal(
    <canvas
      ref={canvas}
      className={styles.magnifier}
      style={{ width: SIZE_PX, height: SIZE_PX, ...beside(toClient(stage, at)) }}
    />,
    document.body,
  );
}

/** Above the place, or to one of its sides where the screen ends: a hand covers what is beneath. */
function beside({ x, y }: { x: number; y: number }): { left: number; top: number } {
  const { clientWidth } = document.documentElement;
  const above = y - SIZE_PX - AWAY_PX;
  const left = Math.min(Math.max(4, x - SIZE_PX / 2), clientWidth - SIZE_PX - 4);
  if (above >= 0) return { left, top: above };
  const isLeft = x - SIZE_PX - AWAY_PX >= 0;
  return { left: isLeft ? x - SIZE_PX - AWAY_PX : x + AWAY_PX, top: Math.max(4, y - SIZE_PX) };
}

/** A cross with a gap in its middle, so that what is pointed at stays in sight. */
function drawCross(pen: CanvasRenderingContext2D): void {
  const middle = SIZE_PX / 2;
  const gap = 5;
  const look = getComputedStyle(pen.canvas);
  for (const [width, colour] of [
    [3.5, look.getPropertyValue("--mark-edge")],
    [1.25, look.getPropertyValue("--mark")],
  ] as const) {
    pen.lineWidth = width;
    pen.strokeStyle = colour;
    pen.beginPath();
    for (const [fromX, fromY, toX, toY] of [
      [0, middle, middle - gap, middle],
      [middle + gap, middle, SIZE_PX, middle],
      [middle, 0, middle, middle - gap],
      [middle, middle + gap, middle, SIZE_PX],
    ] as const) {
      pen.moveTo(fromX, fromY);
      pen.lineTo(toX, toY);
    }
    pen.stroke();
  }
}
