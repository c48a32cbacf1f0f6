"use client";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { PlayedClip } from "./played-clip";
import type { DrawPicture } from "./stage/draw-shown";
import type { PictureSize } from "./stage/picture-place";
import type { StageView } from "./stage/stage-view";
import { useStageView } from "./stage/use-stage-view";
import { type PictureState, usePicture } from "./use-picture";
import { useStepping } from "./use-stepping";

/** The speeds a clip plays at, fastest first. */
export const SPEEDS = [1, 0.5, 0.25, 0.125] as const;
export type Speed = (typeof SPEEDS)[number];

/** A clip in a screen's hands: what is on the picture, and what can be done with it. Frames count from 0. */
export interface ClipPlayer {
  clip: PlayedClip;
  attach: (video: HTMLVideoElement | null) => void;
  video: HTMLVideoElement | null;
  picture: PictureState;
  /** The upright picture in its own pixels; of a film of unknown size, what the browser says once it is there. */
  size: PictureSize;
  /** How the picture lies on its stage. */
  view: StageView;
  look: (change: (view: StageView) => StageView) => void;
  /** Where the pictures come from: decoded ones held ready, or the film sought one by one. */
  source: "decoded" | "film";
  /**
   * Draws a part of what is on the picture now, as `CanvasRenderingContext2D.drawImage` does; the part in the picture's
   * own pixels. @returns false while there is nothing to draw
   */
  drawPicture: DrawPicture;
  /** The frame on the picture, by the browser's own word. */
  frame: number;
  /** The frame asked for; differs from `frame` while the picture follows. */
  wanted: number;
  /** The frame that a mark or a judgement is of: the one the picture is coming to rest on. */
  inHand: number;
  /** False when the browser would not show the very frame that was asked for. */
  isExact: boolean;
  isPlaying: boolean;
  speed: Speed;
  setSpeed: (speed: Speed) => void;
  /** The frame that the next step counts from: the one asked for last, be it drawn or not. */
  aim: () => number;
  show: (frame: number) => void;
  step: (frames: number) => void;
  toggle: () => void;
  pause: () => void;
  /** Plays from one frame to another at a speed, then stands on a third. */
  playThrough: (span: { from: number; to: number; rest: number; speed: Speed }) => void;
  retry: () => void;
}

/**
 * Holds one clip: plays it, steps it by the table of frames, and says which frame is on the picture. When the clip
 * changes it begins anew on `startFrame`.
 */
export function useClipPlayer(given: PlayedClip, startFrame = 0): ClipPlayer {
  const clip = useSteady(given);
  const [video, setVideo] = useState<HTMLVideoElement | null>(null);
  const [picture, setPicture] = useState<PictureState>("loading");
  const [isPlaying, setPlaying] = useState(false);
  const [speed, setSpeedState] = useState<Speed>(1);
  const stepping = useStepping(video, clip, picture === "ready", startFrame);
  const { frame, show: showNow, wantedNow } = stepping;
  const stage = useStageView(clip, video, picture);
  const through = useRef<{ to: number; rest: number; speedAfter: Speed } | null>(null);

  usePicture(video, clip.id, setPicture, setPlaying);

  useEffect(() => {
    if (!video) return;
    video.defaultPlaybackRate = speed;
    video.playbackRate = speed;
  }, [video, speed]);

  const pause = useCallback(() => {
    through.current = null;
    video?.pause();
  }, [video]);

  const show = useCallback(
    (asked: number) => {
      pause();
      showNow(asked);
    },
    [pause, showNow],
  );

  const play = useCallback(() => {
    video?.play().catch(() => undefined);
  }, [video]);

  useEffect(() => {
    const span = through.current;
    if (!span || !isPlaying || frame < span.to) return;
    setSpeedState(span.speedAfter);
    show(span.rest);
  }, [frame, isPlaying, show]);

  return useMemo(
    () => ({
      clip,
      attach: setVideo,
      video,
      picture,
      ...stage,
      source: "film" as const,
      frame,
      wanted: stepping.wanted,
      inHand: stepping.isExact ? stepping.wanted : frame,
      isExact: stepping.isExact,
      isPlaying,
      speed,
      setSpeed: setSpeedState,
      aim: wantedNow,
      show,
      step: (frames: number) => show(wantedNow() + frames),
      toggle: () => (isPlaying ? pause() : play()),
      pause,
      playThrough: ({ from, to, rest, speed: slow }) => {
        pause();
        const last = clip.frameTimesMs.length - 1;
        showNow(from, () => {
          through.current = { to: Math.min(to, last - 1), rest, speedAfter: speed };
          setSpeedState(slow);
          play();
        });
      },
      retry: () => {
        setPicture("loading");
        video?.load();
      },
    }),
    [
      clip,
      video,
      picture,
      stage,
      frame,
      stepping.wanted,
      stepping.isExact,
      isPlaying,
      speed,
      show,
      showNow,
      wantedNow,
      play,
      pause,
    ],
  );
}

/** The same object for as long as it is the same film: a page that is drawn anew must not take the clip back to its start. */
function useSteady(clip: PlayedClip): PlayedClip {
  const held = useRef(clip);
  const { id, state, hasPoster, frameTimesMs } = held.current;
  const isSame = id === clip.id && state === clip.state && frameTimesMs.length === clip.frameTimesMs.length;
  if (!isSame || hasPoster !== clip.hasPoster)
    held.current = { ...clip, frameTimesMs: isSame ? frameTimesMs : clip.frameTimesMs };
  return held.current;
}
