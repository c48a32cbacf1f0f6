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
}

/** Plays a film at a speed: on to its end, over and over between two frames, or once through a few. */
export function usePlayback({ video, stepping, frame, last, isPlaying }: Played) {
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
    video?.pause();
  }, [video]);

  const play = useCallback(
    (from?: number) => {
      stepping?.start(from);
      // A browser that will not play says so once more by the state of the film.
      video?.play().catch(() => stepping?.stop());
    },
    [video, stepping],
  );

  useEffect(() => stepping?.loopIn(loop), [loop, stepping]);

  useEffect(() => {
    if (isPlaying) return;
    if (loop && video?.ended) play(loop.from);
    else stepping?.stop();
  }, [isPlaying, loop, video, stepping, play]);

  const show = useCallback(
    (asked: number) => {
      pause();
      stepping?.show(asked);
    },
    [pause, stepping],
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
        pause();
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
