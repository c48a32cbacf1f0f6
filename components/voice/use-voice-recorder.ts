"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import { MAX_VOICE_MS } from "@/server/domain/reviews/voice-note";
import { whyNotRecorded } from "./voice-words";

/** How recording stands. `spokenMs` counts up while it runs. */
export type Recording =
  | { kind: "idle" }
  | { kind: "asking" }
  | { kind: "running"; spokenMs: number }
  /** It cannot be done here, and why. */
  | { kind: "impossible"; sentence: string };

/** What can be recorded here, the better first: Opus in WebM, and AAC in MP4 where there is no other. */
const FORMATS = ["audio/webm;codecs=opus", "audio/mp4;codecs=opus", "audio/mp4"] as const;

/** Enough for one voice, in bits a second: a minute is 240 kB. Common practice, no source. */
const VOICE_BITS_PER_SECOND = 32_000;

const TICK_MS = 200;

/** A recording that runs. */
interface Run {
  stop: () => void;
}

/**
 * Records a voice for at most a minute, then stops by itself. The microphone is held only while it runs. When the
 * field is closed meanwhile it stops too, and what was said until then counts.
 */
export function useVoiceRecorder(onSpoken: (spoken: Blob) => void) {
  const [recording, setRecording] = useState<Recording>({ kind: "idle" });
  const run = useRef<Run | null>(null);
  const isGone = useRef(false);
  const latest = useRef(onSpoken);
  latest.current = onSpoken;

  useEffect(() => {
    isGone.current = false;
    return () => {
      isGone.current = true;
      run.current?.stop();
    };
  }, []);

  const start = useCallback(async () => {
    setRecording({ kind: "asking" });
    try {
      const microphone = await openMicrophone();
      if (isGone.current) return letGo(microphone);
      run.current = record(microphone, {
        onTick: (spokenMs) => setRecording({ kind: "running", spokenMs }),
        onEnd: (spoken) => {
          run.current = null;
          setRecording({ kind: "idle" });
          if (spoken.size > 0) latest.current(spoken);
        },
      });
    } catch (error) {
      const name = error instanceof Error ? error.name : "";
      setRecording({ kind: "impossible", sentence: whyNotRecorded(name) });
    }
  }, []);

  return { recording, start, stop: useCallback(() => run.current?.stop(), []) };
}

async function openMicrophone(): Promise<MediaStream> {
  if (typeof MediaRecorder === "undefined" || !navigator.mediaDevices)
    throw new Error("There is nothing to record with.");
  return navigator.mediaDevices.getUserMedia({ audio: { channelCount: 1 }, video: false });
}

function letGo(microphone: MediaStream): void {
  for (const track of microphone.getTracks()) track.stop();
}

interface RunWatcher {
  onTick: (spokenMs: number) => void;
  onEnd: (spoken: Blob) => void;
}

function record(microphone: MediaStream, { onTick, onEnd }: RunWatcher): Run {
  const mimeType = FORMATS.find((each) => MediaRecorder.isTypeSupported(each));
  const recorder = new MediaRecorder(microphone, {
    ...(mimeType === undefined ? {} : { mimeType }),
    audioBitsPerSecond: VOICE_BITS_PER_SECOND,
  });
  const parts: Blob[] = [];
  const begunMs = performance.now();
  const tick = () => {
    const spokenMs = performance.now() - begunMs;
    if (spokenMs >= MAX_VOICE_MS) stop();
    else onTick(spokenMs);
  };
  const stop = () => {
    clearInterval(timer);
    if (recorder.state !== "inactive") recorder.stop();
  };
  recorder.ondataavailable = ({ data }) => parts.push(data);
  recorder.onstop = () => {
    clearInterval(timer);
    letGo(microphone);
    onEnd(new Blob(parts, { type: recorder.mimeType }));
  };
  recorder.start();
  const timer = setInterval(tick, TICK_MS);
  onTick(0);
  return { stop };
}
