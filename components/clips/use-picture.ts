"use client";
import { useEffect } from "react";
import { clipVideoAddress } from "./played-clip";

/** `undecodable`: this browser cannot draw the film. `failed`: it did not come over the line. */
export type PictureState = "loading" | "ready" | "undecodable" | "failed";

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
    const fail = async () => {
      const state = await whyNoPicture(clipId);
      if (!isOver) setPicture(state);
    };
    const judge = () => {
      if (video.error) void fail();
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
async function whyNoPicture(clipId: string): Promise<PictureState> {
  try {
    const answer = await fetch(clipVideoAddress(clipId), { method: "HEAD" });
    return answer.ok ? "undecodable" : "failed";
  } catch {
    return "failed";
  }
}
