"use client";
import { type RefObject, useEffect, useMemo, useRef, useState } from "react";
import type { PlayedClip } from "./played-clip";
import { watchFrames } from "./show-frame";
import type { PictureSize } from "./stage/picture-place";
import { FIRST_PLACE, type Place } from "./stage/place";
import { SteppedFilm } from "./stage/stepped-film";
import { Stepping } from "./stage/stepping";
import { ToldPlace } from "./stage/told-place";

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
): { place: Place; told: ToldPlace; stepping: Stepping | null } {
  const { id, frameTimesMs } = clip;
  const [place, setPlace] = useState<Place>({ ...FIRST_PLACE, wanted: startFrame });
  const [told] = useState(() => new ToldPlace(setPlace));
  const [stepping, setStepping] = useState<Stepping | null>(null);
  const sizeNow = useRef(size);
  sizeNow.current = size;

  useEffect(() => {
    if (!video) return;
    const film = new SteppedFilm({ video, canvas, size: sizeNow, id, frameTimesMs, tell: told.tell });
    const begun = new Stepping(film, startFrame);
    told.tell({ ...FIRST_PLACE, wanted: begun.aim() });
    setStepping(begun);
    const stop = watchFrames(video, frameTimesMs, (frame) => begun.filmTold(frame));
    return () => {
      stop();
      begun.end();
      letGoIfGone(video);
    };
  }, [video, canvas, id, frameTimesMs, startFrame, told]);

  useEffect(() => {
    if (isReady) stepping?.ready();
  }, [isReady, stepping]);
  useEffect(() => told.heedHands(), [told]);
  useEffect(() => told.drawn(place), [told, place]);
  useLetGoWhileHidden(stepping);
  return useMemo(() => ({ place, told, stepping }), [place, told, stepping]);
}

/** A browser has so many players of films a page and no more, and takes its time to find out which nobody sees. */
function letGoIfGone(video: HTMLVideoElement): void {
  if (video.isConnected) return;
  video.removeAttribute("src");
  video.load();
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
