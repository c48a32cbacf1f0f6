"use client";
import { type ReactNode, useEffect, useRef, useState } from "react";
import { Button } from "@/components/ui/button";
import { MAX_VOICE_MS } from "@/server/domain/reviews/voice-note";
import { useKeptVoice } from "./use-kept-voice";
import { useVoiceRecorder } from "./use-voice-recorder";
import styles from "./voice.module.css";
import { voiceAddress } from "./voice-address";
import { VoicePlayer } from "./voice-player";
import { timeLeft } from "./voice-words";

/** What a {@link VoiceNote} takes. */
export interface VoiceNoteProps {
  roundId: string;
  /** The line of the draft it is on. */
  lineId: string;
  /** What the note is on; read out with each button. @example "Correction 2: front knee" */
  label: string;
  /** The note that is kept; null while there is none. */
  voiceId: string | null;
  onChange: (voiceId: string | null) => void;
}

/** A spoken note as it is made: spoken, listened to, spoken anew, taken off. It is kept as soon as it is stopped. */
export function VoiceNote({ roundId, lineId, label, voiceId, onChange }: VoiceNoteProps) {
  const { keeping, keep, retry, drop } = useKeptVoice({ roundId, lineId }, onChange);
  const { recording, start, stop } = useVoiceRecorder(keep);
  const place = useFocusAfter(recording.kind === "running");
  const isAsking = recording.kind === "asking";
  const again = (
    <Button isSmall isPending={isAsking} onPress={() => void start()} aria-label={`Speak anew: ${label}`}>
      Speak anew
    </Button>
  );
  return (
    <div ref={place} className={styles.note}>
      {recording.kind === "running" ? (
        <Running spokenMs={recording.spokenMs} label={label} onStop={stop} />
      ) : keeping.kind === "none" ? (
        <Kept voiceId={voiceId} label={label} onRemove={() => onChange(null)} again={again}>
          <Button
            isSmall
            isPending={isAsking}
            pendingText="Asking for the microphone…"
            onPress={() => void start()}
            aria-label={`Speak a note: ${label}`}
          >
            Speak a note
          </Button>
        </Kept>
      ) : (
        <NotYetKept spoken={keeping.spoken} label={label}>
          {keeping.kind === "sending" ? (
            <span className={styles.time} role="status">
              Keeping it…
            </span>
          ) : (
            <>
              <Button isSmall onPress={retry} aria-label={`Send it again: ${label}`}>
                Send it again
              </Button>
              {again}
              <Button isSmall variant="link" onPress={drop} aria-label={`Leave it: ${label}`}>
                Leave it
              </Button>
            </>
          )}
        </NotYetKept>
      )}
      {keeping.kind === "refused" && recording.kind !== "running" ? (
        <p className={styles.silent} role="alert">
          {keeping.sentence}
        </p>
      ) : null}
      {recording.kind === "impossible" ? (
        <p className={styles.silent} role="status">
          {recording.sentence}
        </p>
      ) : null}
    </div>
  );
}

/** The button that ends it is gone then: the first of those that take its place is in hand. */
function useFocusAfter(isRunning: boolean) {
  const place = useRef<HTMLDivElement>(null);
  const wasRunning = useRef(false);
  useEffect(() => {
    if (wasRunning.current && !isRunning) place.current?.querySelector("button")?.focus();
    wasRunning.current = isRunning;
  }, [isRunning]);
  return place;
}

function Running({ spokenMs, label, onStop }: { spokenMs: number; label: string; onStop: () => void }) {
  return (
    <div className={styles.voice}>
      {/* The button that began it is gone: this one takes its place, so that the same key ends it. */}
      <Button autoFocus isSmall onPress={onStop} aria-label={`Stop speaking: ${label}`}>
        Stop
      </Button>
      <svg className={styles.track} aria-hidden="true">
        <rect className={styles.done} width={`${(spokenMs / MAX_VOICE_MS) * 100}%`} height="100%" />
      </svg>
      <span className={styles.left} role="timer">
        {timeLeft(spokenMs)}
      </span>
    </div>
  );
}

interface KeptProps {
  voiceId: string | null;
  label: string;
  onRemove: () => void;
  again: ReactNode;
  /** Stands there while there is none. */
  children: ReactNode;
}

function Kept({ voiceId, label, onRemove, again, children }: KeptProps) {
  if (voiceId === null) return <div className={styles.voice}>{children}</div>;
  return (
    <VoicePlayer isSmall address={voiceAddress(voiceId)} label={label}>
      {again}
      <Button isSmall variant="link" onPress={onRemove} aria-label={`Take the spoken note off: ${label}`}>
        Take it off
      </Button>
    </VoicePlayer>
  );
}

/** What was said and is in this browser alone. */
function NotYetKept({ spoken, label, children }: { spoken: Blob; label: string; children: ReactNode }) {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(spoken);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [spoken]);
  return (
    <VoicePlayer isSmall address={address} label={label}>
      {children}
    </VoicePlayer>
  );
}
