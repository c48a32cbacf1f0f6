"use client";
import { type RefObject, useEffect, useMemo, useRef, useState } from "react";
import { seekTargetMs } from "./frame-table";
import { clipVideoAddress, type PlayedClip } from "./played-clip";
import { showFrame, watchFrames } from "./show-frame";
import { FrameWindow, type FrameWindowEvents } from "./stage/frame-window";
import { openFrames } from "./stage/open-frames";
import { paintHeld } from "./stage/paint-held";
import type { PictureSize } from "./stage/picture-place";
import { FIRST_PLACE, type Place, Stepping } from "./stage/stepping";

/** What a clip is stepped on. */
interface SteppedStage {
  video: HTMLVideoElement | null;
  /** Lies over the film for the pictures that are held decoded. */
  canvas: RefObject<HTMLCanvasElement | null>;
  size: PictureSize;
}

/** Where the picture of a clip stands, and what moves it; `stepping` is null while there is no film. */
export function useStepping(
  { video, canvas, size }: SteppedStage,
  clip: PlayedClip,
  isReady: boolean,
  startFrame: number,
): { place: Place; stepping: Stepping | null } {
  const { id, frameTimesMs } = clip;
  const [place, setPlace] = useState<Place>({ ...FIRST_PLACE, wanted: startFrame });
  const [stepping, setStepping] = useState<Stepping | null>(null);
  const sizeNow = useRef(size);
  sizeNow.current = size;

  useEffect(() => {
    if (!video) return;
    const begun = new Stepping(
      {
        frameTimesMs,
        film: filmOf(video, frameTimesMs),
        openWindow: (events) =>
          openWindow({ address: clipVideoAddress(id), frameTimesMs, size: sizeNow.current }, events),
        paint: (held) => paintHeld(held, canvas.current, sizeNow.current),
        tell: setPlace,
      },
      startFrame,
    );
    setPlace({ ...FIRST_PLACE, wanted: begun.aim() });
    setStepping(begun);
    const stop = watchFrames(video, frameTimesMs, (frame) => begun.filmTold(frame));
    return () => {
      stop();
      begun.end();
    };
  }, [video, canvas, id, frameTimesMs, startFrame]);

  useEffect(() => {
    if (isReady) stepping?.ready();
  }, [isReady, stepping]);
  useLetGoWhileHidden(stepping);
  return useMemo(() => ({ place, stepping }), [place, stepping]);
}

function filmOf(video: HTMLVideoElement, frameTimesMs: readonly number[]) {
  return {
    seek: (frame: number, signal: AbortSignal) => showFrame(video, frameTimesMs, frame, signal),
    moveTo: (frame: number) => {
      video.currentTime = seekTargetMs(frameTimesMs, frame, 0.5, video.duration * 1000) / 1000;
    },
    isSeeking: () => video.seeking,
  };
}

async function openWindow(
  film: { address: string; frameTimesMs: readonly number[]; size: PictureSize },
  events: FrameWindowEvents,
): Promise<FrameWindow | null> {
  const source = await openFrames(film);
  return source && new FrameWindow(source, film.frameTimesMs.length, events);
}

/** A page that nobody looks at holds no pictures. */
function useLetGoWhileHidden(stepping: Stepping | null): void {
  useEffect(() => {
    if (!stepping) return;
    const judge = () => (document.hidden ? stepping.letGo() : stepping.takeUp());
    document.addEventListener("visibilitychange", judge);
    return () => document.removeEventListener("visibilitychange", judge);
  }, [stepping]);
}
