"use client";
import { type RefObject, useMemo, useRef, useState } from "react";
import type { PlayedClip } from "./played-clip";
import type { DrawPicture } from "./stage/draw-shown";
import type { LoopSpan } from "./stage/loop-span";
import type { PictureSize } from "./stage/picture-place";
import type { StageView } from "./stage/stage-view";
import type { ToldPlace } from "./stage/told-place";
import { useStageView } from "./stage/use-stage-view";
import { type PictureState, usePicture } from "./use-picture";
import { type SlowPass, type Speed, usePlayback } from "./use-playback";
import { useStepping } from "./use-stepping";

/** A clip in a screen's hands: what is on the picture, and what can be done with it. Frames count from 0. */
export interface ClipPlayer {
  clip: PlayedClip;
  attach: (video: HTMLVideoElement | null) => void;
  video: HTMLVideoElement | null;
  /** Lies over the film and shows the pictures that are held decoded. */
  canvas: RefObject<HTMLCanvasElement | null>;
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
  /** Where the picture stands, for what must follow it at once: the picture itself and the frame it says it is. */
  told: ToldPlace;
  /** What is seen of the two. */
  shownBy: "film" | "canvas";
  /** The frame on the picture, by the browser's own word or that of the decoded picture. */
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
  playThrough: (pass: SlowPass) => void;
  /** The frames that are played over and over; null plays on to the end. */
  loop: LoopSpan | null;
  setLoop: (loop: LoopSpan | null) => void;
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
  const [isFilmPlaying, setPlaying] = useState(false);
  const canvas = useRef<HTMLCanvasElement>(null);
  const size = usePictureSize(clip, picture === "ready" ? video : null);
  const { place, told, stepping } = useStepping(
    { video, canvas, size },
    clip,
    picture === "ready",
    startFrame,
  );
  const { frame, wanted, isExact, shownBy } = place;
  const stage = useStageView(clip.id, size, shownBy === "canvas" ? canvas.current : video);
  const last = clip.frameTimesMs.length - 1;
  const isPlaying = isFilmPlaying || place.isLooping;
  const playback = usePlayback({ video, stepping, frame, last, isPlaying, isFilmPlaying });

  usePicture(video, clip.id, setPicture, setPlaying);

  return useMemo(() => {
    const aim = () => stepping?.aim() ?? wanted;
    return {
      clip,
      attach: setVideo,
      video,
      canvas,
      told,
      picture,
      ...stage,
      ...place,
      inHand: isExact ? wanted : frame,
      isPlaying,
      ...playback,
      aim,
      step: (frames: number) => playback.show(aim() + frames),
      retry: () => {
        setPicture("loading");
        video?.load();
      },
    };
  }, [clip, video, picture, stage, place, told, stepping, isPlaying, playback, frame, wanted, isExact]);
}

/** A picture whose size nobody knows yet takes this room meanwhile. */
const UNKNOWN_SIZE: PictureSize = { widthPx: 1280, heightPx: 720 };

/** The size of a clip's picture, or what the browser says once the film is there. */
function usePictureSize({ widthPx, heightPx }: PlayedClip, film: HTMLVideoElement | null): PictureSize {
  return useMemo(() => {
    if (widthPx && heightPx) return { widthPx, heightPx };
    if (!film || film.videoWidth === 0) return UNKNOWN_SIZE;
    return { widthPx: film.videoWidth, heightPx: film.videoHeight };
  }, [widthPx, heightPx, film]);
}

/** The same object for as long as it is the same film: a page that is drawn anew must not take the clip back to its start. */
function useSteady(clip: PlayedClip): PlayedClip {
  const held = useRef(clip);
  const { id, state, hasPoster, capturedFps, conversion, frameTimesMs } = held.current;
  const isSame = id === clip.id && state === clip.state && frameTimesMs.length === clip.frameTimesMs.length;
  const isToldAlike =
    hasPoster === clip.hasPoster && capturedFps === clip.capturedFps && conversion === clip.conversion;
  if (!isSame || !isToldAlike)
    held.current = { ...clip, frameTimesMs: isSame ? frameTimesMs : clip.frameTimesMs };
  return held.current;
}
