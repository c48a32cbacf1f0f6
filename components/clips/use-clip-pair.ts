"use client";
import { useRef, useState } from "react";
import { clampFrame, followFrame } from "./frame-table";
import type { ClipPlayer } from "./use-clip-player";

/** Two clips that can be stepped together. */
export interface ClipPair {
  /** Each drives the other while they go together. */
  older: ClipPlayer;
  newer: ClipPlayer;
  isTogether: boolean;
  /** Ties them as they stand now, or lets each go its own way. */
  setTogether: (isTogether: boolean) => void;
  /** Shows a pair of frames and ties the clips on it. */
  showPair: (olderFrame: number, newerFrame: number) => void;
}

/**
 * Ties two clips on a pair of frames, the same moment of two deliveries: where one goes, the other goes as long after or
 * before that moment, by the clock of the films. They begin tied on `tiedAt`.
 */
export function useClipPair(older: ClipPlayer, newer: ClipPlayer, tiedAt = { older: 0, newer: 0 }): ClipPair {
  const [isTogether, setTied] = useState(true);
  const tied = useRef(tiedAt);
  const tie = (olderFrame: number, newerFrame: number) => {
    tied.current = { older: olderFrame, newer: newerFrame };
  };
  const newerAt = (frame: number) =>
    followFrame(
      { leader: tied.current.older, follower: tied.current.newer },
      older.clip.frameTimesMs,
      newer.clip.frameTimesMs,
      frame,
    );
  const olderAt = (frame: number) =>
    followFrame(
      { leader: tied.current.newer, follower: tied.current.older },
      newer.clip.frameTimesMs,
      older.clip.frameTimesMs,
      frame,
    );
  return {
    older: driving(older, newer, isTogether, newerAt),
    newer: driving(newer, older, isTogether, olderAt),
    isTogether,
    setTogether: (next) => {
      if (next) tie(older.aim(), newer.aim());
      setTied(next);
    },
    showPair: (olderFrame, newerFrame) => {
      tie(olderFrame, newerFrame);
      older.show(olderFrame);
      newer.show(newerFrame);
    },
  };
}

/** A player whose acts take another along; the other's film may not be there, then it stands still. */
function driving(
  lead: ClipPlayer,
  other: ClipPlayer,
  isTogether: boolean,
  otherAt: (frame: number) => number,
): ClipPlayer {
  if (!isTogether || other.picture !== "ready" || lead.picture !== "ready") return lead;
  const show = (frame: number) => {
    const within = clampFrame(lead.clip.frameTimesMs, frame);
    lead.show(within);
    other.show(otherAt(within));
  };
  return {
    ...lead,
    show,
    step: (frames) => show(lead.aim() + frames),
    toggle: () => {
      if (lead.isPlaying) return show(lead.frame);
      lead.toggle();
      if (!other.isPlaying) other.toggle();
    },
    setSpeed: (speed) => {
      lead.setSpeed(speed);
      other.setSpeed(speed);
    },
  };
}
