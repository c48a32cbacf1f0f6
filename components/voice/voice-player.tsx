"use client";
import type { ReactNode } from "react";
import { Button } from "@/components/ui/button";
import { type Hearing, useVoicePlayer } from "./use-voice-player";
import styles from "./voice.module.css";
import { spokenTime } from "./voice-words";

/** What a {@link VoicePlayer} takes. */
export interface VoicePlayerProps {
  /** Where the note is: kept by the academy, or still in this browser alone; null for the moment until it is known. */
  address: string | null;
  /** What it is a note on; read out with the button. */
  label: string;
  /** Told when it is heard, and when it rests again. */
  onPlaying?: (isPlaying: boolean) => void;
  /** For tight places. */
  isSmall?: boolean;
  /** Stands beside it: what else can be done with it. */
  children?: ReactNode;
}

const SILENT: Record<Exclude<Hearing, "resting" | "playing">, string> = {
  gone: "The spoken note is no longer kept. What was written about it is.",
  unplayable: "This browser cannot play the spoken note. What is written here is the whole of it.",
  lost: "The spoken note did not come through. Check the connection and open the page again.",
};

/** A spoken note to be listened to. */
export function VoicePlayer({ address, label, onPlaying, isSmall, children }: VoicePlayerProps) {
  const { hearing, lengthMs, heardMs, attach, toggle } = useVoicePlayer(address, onPlaying);
  const isPlaying = hearing === "playing";
  return (
    <div className={styles.voice} data-print="no">
      {/* biome-ignore lint/a11y/useMediaCaption: the words of the note stand beside it in writing */}
      <audio key={address} ref={attach} src={address ?? undefined} preload="metadata" />
      {isPlaying || hearing === "resting" ? (
        <>
          <Button
            isSmall={isSmall}
            onPress={toggle}
            aria-label={`${isPlaying ? "Stop" : "Listen to"} the spoken note: ${label}`}
          >
            <Sign path={isPlaying ? "M5.5 4v8M10.5 4v8" : "M5.5 3.5L12 8l-6.5 4.5z"} />
            {isPlaying ? "Stop" : "Listen"}
          </Button>
          <Heard lengthMs={lengthMs} heardMs={heardMs} />
        </>
      ) : (
        <p className={styles.silent}>{SILENT[hearing]}</p>
      )}
      {children}
    </div>
  );
}

/** A note that was deleted with its film. */
export function VoiceGone() {
  return <p className={styles.silent}>{SILENT.gone}</p>;
}

function Heard({ lengthMs, heardMs }: { lengthMs: number; heardMs: number }) {
  const share = lengthMs > 0 ? Math.min(1, heardMs / lengthMs) : 0;
  return (
    <>
      <svg className={styles.track} aria-hidden="true">
        <rect className={styles.done} width={`${share * 100}%`} height="100%" />
      </svg>
      <span className={styles.time}>
        {lengthMs === 0 ? "" : `${heardMs > 0 ? `${spokenTime(heardMs)} of ` : ""}${spokenTime(lengthMs)}`}
      </span>
    </>
  );
}

function Sign({ path }: { path: string }) {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" fill="none" stroke="currentColor" aria-hidden="true">
      <path d={path} strokeWidth="1.6" strokeLinejoin="round" strokeLinecap="round" />
    </svg>
  );
}
