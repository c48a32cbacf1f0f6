"use client";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { LoopSpan } from "./stage/loop-span";
import type { Stepping } from "./stage/stepping";

/** The speeds a clip plays at, fastest first. */
export const SPEEDS = [1, 0.5, 0.25, 0.125] as const;
export type Speed = (typeof SPEEDS)[number];

/** Frames played once, slowly: from one to another, then the picture stands on a third. */
export interface SlowPass {
  from: number;
  to: number;
  rest: number;
  speed: Speed;
}

/** What is played. */
interface Played {
  video: HTMLVideoElement | null;
  stepping: Stepping | null;
  frame: number;
  /** The last frame of the clip. */
  last: number;
  isPlaying: boolean;
  /** Of the film alone: a loop that is held plays without it. */
  isFilmPlaying: boolean;
}

/** Plays a film at a speed: on to its end, over and over between two frames, or once through a few. */
export function usePlayback({ video, stepping, frame, last, isPlaying, isFilmPlaying }: Played) {
  const [speed, setSpeed] = useState<Speed>(1);
  const [loop, setLoop] = useState<LoopSpan | null>(null);
  const through = useRef<{ to: number; rest: number; speedAfter: Speed } | null>(null);

  useEffect(() => {
    if (!video) return;
    video.defaultPlaybackRate = speed;
    video.playbackRate = speed;
  }, [video, speed]);

  // Another clip has other moments.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of the clip that matters
  useEffect(() => setLoop(null), [video]);

  const pause = useCallback(() => {
    through.current = null;
    stepping?.stop();
  }, [stepping]);

  const play = useCallback((from?: number) => stepping?.start(from), [stepping]);

  useEffect(() => stepping?.loopIn(loop), [loop, stepping]);

  useEffect(() => {
    if (!isFilmPlaying) stepping?.filmStopped();
  }, [isFilmPlaying, stepping]);

  const show = useCallback(
    (asked: number) => {
      through.current = null;
      stepping?.show(asked);
    },
    [stepping],
  );

  useEffect(() => {
    const pass = through.current;
    if (!pass || !isPlaying || frame < pass.to) return;
    setSpeed(pass.speedAfter);
    show(pass.rest);
  }, [frame, isPlaying, show]);

  return useMemo(
    () => ({
      speed,
      setSpeed,
      loop,
      setLoop,
      show,
      pause,
      toggle: () => {
        if (isPlaying) return pause();
        const isBeside = loop !== null && (frame < loop.from || frame >= loop.to);
        play(isBeside ? loop.from : frame >= last ? 0 : undefined);
      },
      playThrough: ({ from, to, rest, speed: slow }: SlowPass) => {
        through.current = null;
        setLoop(null);
        stepping?.show(from, () => {
          through.current = { to: Math.min(to, last - 1), rest, speedAfter: speed };
          setSpeed(slow);
          play();
        });
      },
    }),
    [speed, loop, show, pause, play, isPlaying, frame, last, stepping],
  );
}
