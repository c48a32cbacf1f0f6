"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import { clampFrame } from "./frame-table";
import type { PlayedClip } from "./played-clip";
import { showFrame, watchFrames } from "./show-frame";

/** Shows the latest frame asked for, one seek at a time: those asked for meanwhile are passed over. */
export function useStepping(
  video: HTMLVideoElement | null,
  { frameTimesMs: timesMs }: PlayedClip,
  isReady: boolean,
  startFrame: number,
) {
  const [frame, setFrame] = useState(0);
  const [wanted, setWanted] = useState(startFrame);
  const [isExact, setExact] = useState(true);
  const asked = useRef<{ frame: number; whenShown: (() => void) | undefined } | null>(null);
  const busy = useRef(false);
  const shown = useRef(0);
  /** The still picture lies over the film until the first seek, whatever frame is under it. */
  const isCovered = useRef(true);
  const end = useRef(new AbortController());

  useEffect(() => {
    if (!video) return;
    const controller = new AbortController();
    end.current = controller;
    shown.current = 0;
    isCovered.current = true;
    asked.current = { frame: clampFrame(timesMs, startFrame), whenShown: undefined };
    setFrame(0);
    setWanted(startFrame);
    const stop = watchFrames(video, timesMs, (told) => {
      shown.current = told;
      setFrame(told);
      if (asked.current === null) setWanted(told);
    });
    return () => {
      controller.abort();
      stop();
    };
  }, [video, timesMs, startFrame]);

  const follow = useCallback(async () => {
    if (busy.current || !video) return;
    busy.current = true;
    const { signal } = end.current;
    while (asked.current && !signal.aborted) {
      const { frame: target, whenShown } = asked.current;
      const isThere = shown.current === target && !video.seeking && !isCovered.current;
      isCovered.current = false;
      const hit = isThere || (await showFrame(video, timesMs, target, signal));
      if (asked.current?.frame !== target) continue;
      asked.current = null;
      setExact(hit);
      whenShown?.();
    }
    busy.current = false;
  }, [video, timesMs]);

  useEffect(() => {
    if (isReady) void follow();
  }, [isReady, follow]);

  const show = useCallback(
    (target: number, whenShown?: () => void) => {
      const within = clampFrame(timesMs, target);
      asked.current = { frame: within, whenShown };
      setWanted(within);
      if (isReady) void follow();
    },
    [timesMs, isReady, follow],
  );
  const wantedNow = useCallback(() => asked.current?.frame ?? shown.current, []);
  return { frame, wanted, isExact, show, wantedNow };
}
