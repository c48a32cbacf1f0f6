"use client";
import { useEffect, useRef, useState } from "react";
import type { ClipPlayer } from "@/components/clips/use-clip-player";
import type { ClipView } from "@/server/api/reviews/shapes";
import { slowSpan } from "./slow-span";

/** How long the frame itself stands between two passes, with what is drawn on it. Common practice, no source. */
const REST_MS = 1500;

/** The first pass follows the voice; a moment is left for the picture to come to rest. Common practice, no source. */
const FIRST_MS = 300;

/** A frame that is shown in a slow loop. */
export interface LoopedPlace {
  clip: ClipView;
  frame: number;
}

/**
 * Plays slowly round a frame again and again, resting on it between, until told to stop. It gives way to a hand that
 * steps elsewhere. Whoever asked their device for little motion sees the frame alone.
 */
export function useSlowLoop(player: ClipPlayer, clip: ClipView) {
  const [looped, setLooped] = useState<LoopedPlace | null>(null);
  const passes = useRef(0);
  const latest = useRef(player);
  latest.current = player;
  const isHere = looped?.clip.id === clip.id;
  const isAtRest = isHere && player.picture === "ready" && !player.isPlaying;

  useEffect(() => {
    if (looped === null || !isAtRest || prefersLittleMotion()) return;
    const timer = setTimeout(
      () => {
        const now = latest.current;
        if (now.aim() !== looped.frame) return;
        passes.current += 1;
        now.playThrough(slowSpan(looped.clip, looped.frame));
      },
      passes.current === 0 ? FIRST_MS : REST_MS,
    );
    return () => clearTimeout(timer);
  }, [looped, isAtRest]);

  return {
    start: (place: LoopedPlace) => {
      passes.current = 0;
      setLooped(place);
    },
    stop: () => {
      if (looped === null) return;
      setLooped(null);
      if (isHere && latest.current.isPlaying) latest.current.show(looped.frame);
    },
  };
}

const prefersLittleMotion = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;
