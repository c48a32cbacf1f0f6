"use client";
import { useMemo, useState } from "react";
import type { PlayedClip } from "../played-clip";
import type { PictureState } from "../use-picture";
import { type DrawPicture, drawShown } from "./draw-shown";
import type { PictureSize } from "./picture-place";
import { type StageView, WHOLE_PICTURE } from "./stage-view";

/** A picture whose size nobody knows yet takes this room meanwhile. */
const UNKNOWN_SIZE: PictureSize = { widthPx: 1280, heightPx: 720 };

/** How the picture of a clip lies on its stage; another clip begins whole. */
export function useStageView(
  clip: PlayedClip,
  video: HTMLVideoElement | null,
  picture: PictureState,
): {
  size: PictureSize;
  view: StageView;
  look: (change: (view: StageView) => StageView) => void;
  drawPicture: DrawPicture;
} {
  const [{ clipId, view }, setHeld] = useState({ clipId: clip.id, view: WHOLE_PICTURE });
  const { id, widthPx, heightPx } = clip;
  const size = useMemo(
    () => (widthPx && heightPx ? { widthPx, heightPx } : sizeOfFilm(picture === "ready" ? video : null)),
    [widthPx, heightPx, picture, video],
  );
  return useMemo(
    () => ({
      size,
      view: clipId === id ? view : WHOLE_PICTURE,
      look: (change) =>
        setHeld((held) => ({
          clipId: id,
          view: change(held.clipId === id ? held.view : WHOLE_PICTURE),
        })),
      drawPicture: (context, ...part) => drawShown(video, size, context, part),
    }),
    [clipId, view, id, size, video],
  );
}

function sizeOfFilm(video: HTMLVideoElement | null): PictureSize {
  if (!video || video.videoWidth === 0) return UNKNOWN_SIZE;
  return { widthPx: video.videoWidth, heightPx: video.videoHeight };
}
