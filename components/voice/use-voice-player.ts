"use client";
import { useEffect, useMemo, useRef, useState } from "react";

/**
 * How a spoken note stands: at rest, being heard, deleted, of a kind this browser cannot play, or lost on the way
 * here.
 */
export type Hearing = "resting" | "playing" | "gone" | "unplayable" | "lost";

/** A spoken note in a screen's hands. */
export interface VoicePlayback {
  hearing: Hearing;
  /** Its whole length and how much was heard; the length is 0 until it is known. */
  lengthMs: number;
  heardMs: number;
  attach: (audio: HTMLAudioElement | null) => void;
  toggle: () => void;
}

/** The one that is heard: a second voice over it would be neither. */
let heard: HTMLAudioElement | null = null;

/** Stops whatever is heard: what it was spoken on is no longer in sight. */
export function hush(): void {
  heard?.pause();
}

/** Plays one spoken note, and tells whoever shows its frame when it is heard and when it rests. */
export function useVoicePlayer(
  address: string | null,
  onPlaying?: (isPlaying: boolean) => void,
): VoicePlayback {
  const [audio, attach] = useState<HTMLAudioElement | null>(null);
  const [hearing, setHearing] = useState<Hearing>("resting");
  const [times, setTimes] = useState({ lengthMs: 0, heardMs: 0 });
  const tell = useRef(onPlaying);
  tell.current = onPlaying;

  useEffect(() => {
    if (!audio || address === null) return;
    setHearing("resting");
    const timed = () => setTimes(timesOf(audio));
    const played = () => {
      if (heard !== audio) heard?.pause();
      heard = audio;
      setHearing("playing");
      tell.current?.(true);
    };
    const rested = () => {
      if (heard === audio) heard = null;
      setHearing((now) => (now === "playing" ? "resting" : now));
      tell.current?.(false);
    };
    const failed = () => void whyNotHeard(address).then(setHearing);
    const stop = listenTo(audio, { timed, played, rested, failed });
    timed();
    if (audio.error) failed();
    return () => {
      stop();
      if (!audio.paused) rested();
      audio.pause();
    };
  }, [audio, address]);

  return useMemo(
    () => ({ hearing, ...times, attach, toggle: () => (audio ? toggle(audio) : undefined) }),
    [audio, hearing, times],
  );
}

const timesOf = (audio: HTMLAudioElement) => ({
  lengthMs: Number.isFinite(audio.duration) ? audio.duration * 1000 : 0,
  heardMs: audio.currentTime * 1000,
});

function toggle(audio: HTMLAudioElement): void {
  if (audio.paused) audio.play().catch(() => undefined);
  else audio.pause();
}

function listenTo(
  audio: HTMLAudioElement,
  acts: { timed: () => void; played: () => void; rested: () => void; failed: () => void },
): () => void {
  const told: [string, () => void][] = [
    ["loadedmetadata", acts.timed],
    ["durationchange", acts.timed],
    ["timeupdate", acts.timed],
    ["playing", acts.played],
    ["pause", acts.rested],
    ["error", acts.failed],
  ];
  for (const [name, act] of told) audio.addEventListener(name, act);
  return () => {
    for (const [name, act] of told) audio.removeEventListener(name, act);
  };
}

/** The element says the same of a note that is gone and of one this browser cannot play: the line is asked. */
async function whyNotHeard(address: string): Promise<Hearing> {
  try {
    const answer = await fetch(address, { method: "HEAD" });
    if (answer.ok) return "unplayable";
    return answer.status === 404 || answer.status === 410 ? "gone" : "lost";
  } catch {
    return "lost";
  }
}
