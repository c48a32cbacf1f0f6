"use client";
import { useEffect } from "react";
import { clipVideoAddress } from "./played-clip";

/**
 * `undecodable`: this browser cannot draw the film. `damaged`: it began to and found pictures that none can draw.
 * `failed`: it did not come over the line.
 */
export type PictureState = "loading" | "ready" | "undecodable" | "damaged" | "failed";

/** Reads off the element whether there is a picture, and whether it plays. */
export function usePicture(
  video: HTMLVideoElement | null,
  clipId: string,
  setPicture: (state: PictureState) => void,
  setPlaying: (isPlaying: boolean) => void,
) {
  useEffect(() => {
    if (!video) return;
    let isOver = false;
    const fail = async (error: MediaError) => {
      const state = await whyNoPicture(clipId, error);
      if (!isOver) setPicture(state);
    };
    const judge = () => {
      if (video.error) void fail(video.error);
      else if (video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA) setPicture("loading");
      // A film whose sound alone can be decoded loads and plays without an error, and has no width.
      else setPicture(video.videoWidth === 0 ? "undecodable" : "ready");
    };
    const playing = () => setPlaying(!video.paused && !video.ended);
    judge();
    playing();
    const told: [string, () => void][] = [
      ...["loadeddata", "error", "emptied"].map((name): [string, () => void] => [name, judge]),
      ...["play", "pause", "ended"].map((name): [string, () => void] => [name, playing]),
    ];
    for (const [name, act] of told) video.addEventListener(name, act);
    return () => {
      isOver = true;
      for (const [name, act] of told) video.removeEventListener(name, act);
    };
  }, [video, clipId, setPicture, setPlaying]);
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
