"use client";
import { useMemo, useState } from "react";
import { type DrawPicture, drawShown } from "./draw-shown";
import type { PictureSize } from "./picture-place";
import { type StageView, WHOLE_PICTURE } from "./stage-view";

/** How the picture of a clip lies on its stage; another clip begins whole. */
export function useStageView(
  clipId: string,
  size: PictureSize,
  shown: HTMLVideoElement | HTMLCanvasElement | null,
): {
  size: PictureSize;
  view: StageView;
  look: (change: (view: StageView) => StageView) => void;
  drawPicture: DrawPicture;
} {
  const [held, setHeld] = useState({ clipId, view: WHOLE_PICTURE });
  const view = held.clipId === clipId ? held.view : WHOLE_PICTURE;
  return useMemo(
    () => ({
      size,
      view,
      look: (change) =>
        setHeld((one) => ({ clipId, view: change(one.clipId === clipId ? one.view : WHOLE_PICTURE) })),
      drawPicture: (context, ...part) => drawShown(shown, size, context, part),
    }),
    [clipId, view, size, shown],
  );
}
