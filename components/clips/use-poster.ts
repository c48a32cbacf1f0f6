"use client";
import { useEffect } from "react";
import { drawPicture } from "./draw-picture";
import { clipPosterAddress, clipVideoAddress } from "./played-clip";
import type { ClipPlayer } from "./use-clip-player";

const WIDTH_PX = 960;

/** Sent once a page and clip, whether it is taken or not: the sender or another coach may have been first. */
const sent = new Set<string>();

/** Makes a clip's still picture from what is on the screen when it has none; for those who may give it one. */
export function usePoster({ clip, video, picture }: ClipPlayer, mayGive: boolean): void {
  const { id, hasPoster } = clip;
  const isWanted = mayGive && !hasPoster && picture === "ready" && !sent.has(id);
  useEffect(() => {
    /* For a moment after another clip is chosen, the element in hand is still that of the one before. */
    if (!isWanted || !video?.currentSrc.includes(clipVideoAddress(id))) return;
    sent.add(id);
    drawPicture(video, WIDTH_PX)?.toBlob(
      (picture) => {
        if (!picture) return;
        // A clip without a still picture is a small loss; the next viewer tries again.
        fetch(clipPosterAddress(id), { method: "PUT", body: picture }).catch(() => undefined);
      },
      "image/jpeg",
      0.8,
    );
  }, [isWanted, video, id]);
}
