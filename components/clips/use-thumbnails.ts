"use client";
import { useEffect, useReducer } from "react";
import type { PlayedClip } from "./played-clip";
import { drawnThumbnail, orderThumbnail } from "./thumbnail-desk";

/**
 * Small pictures of frames of a clip, as they are drawn one after another.
 * @returns the address of a frame's picture, or undefined while it is not drawn
 */
export function useThumbnails(
  clip: Pick<PlayedClip, "id" | "state" | "frameTimesMs" | "conversion">,
  frames: readonly number[],
): (frame: number) => string | undefined {
  const [, redraw] = useReducer((count: number) => count + 1, 0);
  const { id, state, frameTimesMs, conversion } = clip;
  const missing = frames.filter((frame) => drawnThumbnail(id, frame) === undefined);
  const wanted = state === "ready" ? missing.join(" ") : "";

  useEffect(() => {
    if (wanted === "") return;
    const takeBack = wanted
      .split(" ")
      .map((frame) => orderThumbnail({ id, frameTimesMs, conversion }, Number(frame), redraw));
    return () => {
      for (const take of takeBack) take();
    };
  }, [wanted, id, frameTimesMs, conversion]);

  return (frame) => drawnThumbnail(id, frame);
}
