"use client";
import { useState } from "react";
import type { MarkedFrames } from "@/components/clips/event-strip";
import { type ClipPlayer, useClipPlayer } from "@/components/clips/use-clip-player";
import type { ClipView, RoomView } from "@/server/api/reviews/shapes";

/** One of several clips, in hand. */
export interface ClipInHand {
  clip: ClipView;
  player: ClipPlayer;
  /** Takes another clip in hand, or another frame of this one. */
  goTo: (clipId: string, frame?: number) => void;
}

/** A frame of a clip, by which a room is opened. */
export interface ClipStart {
  clipId: string;
  frame: number;
}

/** What a part of the room takes: the clips it shows, one at least. */
export interface RoomClips {
  room: RoomView;
  clips: readonly [ClipView, ...ClipView[]];
  start?: ClipStart | undefined;
}

/** Holds one of the clips given (one at least): to begin with the first, unless another of them and its frame are named. */
export function useClipInHand(
  clips: readonly [ClipView, ...ClipView[]],
  start?: ClipStart | undefined,
): ClipInHand {
  const isAmong = clips.some((each) => each.id === start?.clipId);
  const [place, setPlace] = useState(start && isAmong ? start : { clipId: clips[0].id, frame: 0 });
  const clip = clips.find((each) => each.id === place.clipId) ?? clips[0];
  const player = useClipPlayer(clip, place.frame);
  return {
    clip,
    player,
    goTo: (clipId, frame) => {
      if (clipId !== clip.id) setPlace({ clipId, frame: frame ?? 0 });
      else if (frame !== undefined) player.show(frame);
    },
  };
}

/** The marked frame before or after the one on the picture; undefined when there is none. */
export function markedBeside(marks: MarkedFrames, frame: number, direction: -1 | 1): number | undefined {
  const frames = Object.values(marks).sort((a, b) => a - b);
  return direction === 1 ? frames.find((each) => each > frame) : frames.findLast((each) => each < frame);
}
