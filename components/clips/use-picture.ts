"use client";
import { useEffect } from "react";
import { clipVideoAddress } from "./played-clip";

/**
 * `undecodable`: this browser cannot draw the film. `damaged`: it began to and found pictures that none can draw.
 * `failed`: it did not come over the line.
 */
export type PictureState = "loading" | "ready" | "undecodable" | "damaged" | "failed";

/** Who is told how a film stands. */
export interface PictureTold {
  setPicture: (state: PictureState) => void;
  setPlaying: (isPlaying: boolean) => void;
}

/** Reads off the element whether there is a picture, and whether it plays. */
export function usePicture(
  video: HTMLVideoElement | null,
  clipId: string,
  setPicture: PictureTold["setPicture"],
  setPlaying: PictureTold["setPlaying"],
) {
  useEffect(
    () => (video ? watchPicture(video, clipId, { setPicture, setPlaying }) : undefined),
    [video, clipId, setPicture, setPlaying],
  );
}

/** Tells how an element's film stands, now and whenever that changes. @returns what ends it */
export function watchPicture(
  video: HTMLVideoElement,
  clipId: string,
  { setPicture, setPlaying }: PictureTold,
): () => void {
  let isOver = false;
  const failed = async () => {
    if (!video.error) return;
    const state = await whyNoPicture(clipId, video.error);
    if (!isOver) setPicture(state);
  };
  const loading = () => setPicture("loading");
  // A film whose sound alone can be decoded loads and plays without an error, and has no width.
  const loaded = () => setPicture(video.videoWidth === 0 ? "undecodable" : "ready");
  const playing = () => setPlaying(!video.paused && !video.ended);
  if (video.error) void failed();
  else if (video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA) loading();
  else loaded();
  playing();
  const told: [string, () => void][] = [
    // Told a little later than it is so: by then the film may be sought, and has no picture for a moment.
    ["loadeddata", loaded],
    ["emptied", loading],
    ["error", () => void failed()],
    ...["play", "pause", "ended"].map((name): [string, () => void] => [name, playing]),
  ];
  for (const [name, act] of told) video.addEventListener(name, act);
  return () => {
    isOver = true;
    for (const [name, act] of told) video.removeEventListener(name, act);
  };
}

/** The element says the same of a film it cannot decode and of one that never came: the line is asked. */
async function whyNoPicture(clipId: string, { code }: MediaError): Promise<PictureState> {
  try {
    const answer = await fetch(clipVideoAddress(clipId), { method: "HEAD" });
    if (!answer.ok || code === MediaError.MEDIA_ERR_NETWORK) return "failed";
    return code === MediaError.MEDIA_ERR_DECODE ? "damaged" : "undecodable";
  } catch {
    return "failed";
  }
}
