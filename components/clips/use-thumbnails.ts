"use client";
import { useEffect, useState } from "react";
import { drawPicture } from "./draw-picture";
import { clipVideoAddress, type PlayedClip } from "./played-clip";
import { showFrame } from "./show-frame";

/** Sharp on a phone's dense screen at the width the strip gives it. */
const WIDTH_PX = 240;

/** Pictures drawn so far, for as long as the page lives: the same few frames are asked for again and again. */
const drawn = new Map<string, string>();

const keyOf = (clipId: string, frame: number) => `${clipId} ${frame}`;

/**
 * Small pictures of frames of a clip, as they are drawn one by one from a second, unseen video, so that the one in
 * sight stays where it is.
 * @returns the address of a frame's picture, or undefined while it is not drawn
 */
export function useThumbnails(
  clip: PlayedClip,
  frames: readonly number[],
): (frame: number) => string | undefined {
  const [, setCount] = useState(0);
  const { id, state, frameTimesMs } = clip;
  const missing = [...new Set(frames)].filter((frame) => !drawn.has(keyOf(id, frame)));
  const wanted = state === "ready" ? missing.join(" ") : "";

  useEffect(() => {
    if (wanted === "") return;
    const end = new AbortController();
    const video = document.createElement("video");
    const told = () => setCount((count) => count + 1);
    const frames = wanted.split(" ").map(Number);
    // Without small pictures the strip still has its words and frame numbers.
    drawAll(video, { id, frameTimesMs, frames }, end.signal, told).catch(() => undefined);
    return () => {
      end.abort();
      video.removeAttribute("src");
      video.load();
    };
  }, [wanted, id, frameTimesMs]);

  return (frame) => drawn.get(keyOf(id, frame));
}

async function drawAll(
  video: HTMLVideoElement,
  { id, frameTimesMs, frames }: Pick<PlayedClip, "id" | "frameTimesMs"> & { frames: readonly number[] },
  signal: AbortSignal,
  told: () => void,
): Promise<void> {
  await loaded(video, clipVideoAddress(id), signal);
  for (const frame of frames) {
    if (!(await showFrame(video, frameTimesMs, frame, signal))) continue;
    const picture = drawPicture(video, WIDTH_PX)?.toDataURL("image/jpeg", 0.75);
    if (picture) drawn.set(keyOf(id, frame), picture);
    told();
  }
}

function loaded(video: HTMLVideoElement, address: string, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    video.muted = true;
    video.playsInline = true;
    video.preload = "auto";
    video.addEventListener("loadeddata", () => resolve(), { once: true, signal });
    video.addEventListener("error", () => reject(new Error("The film could not be drawn from.")), {
      once: true,
      signal,
    });
    video.src = address;
  });
}
