"use client";
import { Button } from "@/components/ui/button";
import { VoiceNote } from "@/components/voice/voice-note";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import { DRAFT_LIMITS, type DraftCorrection, type DraftKeep } from "@/server/domain/reviews/draft";
import styles from "./room-outline.module.css";
import { RoomPhraseField } from "./room-phrase-field";
import { rowPlace } from "./use-row-in-hand";

/** What a {@link CorrectionEditor} takes. */
export interface CorrectionEditorProps {
  roundId: string;
  correction: DraftCorrection;
  checkpoint: Pick<Checkpoint, "cues" | "drills" | "name">;
  number: number;
  /** The frame on the picture now. */
  frameNow: number;
  onChange: (changes: Partial<Omit<DraftCorrection, "id">>) => void;
  onShow: () => void;
  onUseFrame: () => void;
  onRemove: () => void;
}

/** A correction as it is being written: the usual words picked with one press and then made one's own. */
export function CorrectionEditor(props: CorrectionEditorProps) {
  const { roundId, correction, checkpoint, number, frameNow, onChange, onShow, onUseFrame, onRemove } = props;
  return (
    <section
      id={rowPlace(correction.id)}
      className={styles.editor}
      aria-label={`Correction ${number}: ${checkpoint.name}`}
    >
      <RoomPhraseField
        label={`Correction ${number}: the cue`}
        value={correction.cue}
        maxLength={DRAFT_LIMITS.cueLength}
        placeholder="In your own words"
        onChange={(cue) => onChange({ cue })}
        words={checkpoint.cues}
        wordsLabel="Usual cues"
      />
      <RoomPhraseField
        label="Drill"
        isOptional
        value={correction.drill}
        maxLength={DRAFT_LIMITS.drillLength}
        onChange={(drill) => onChange({ drill })}
        words={checkpoint.drills}
        wordsLabel="Usual drills"
      />
      <VoiceNote
        roundId={roundId}
        lineId={correction.id}
        label={`Correction ${number}: ${checkpoint.name}`}
        voiceId={correction.voiceId}
        onChange={(voiceId) => onChange({ voiceId })}
      />
      <div className={styles.acts}>
        <Button variant="link" onPress={onShow}>
          Frame {correction.frame + 1}: show
        </Button>
        {correction.frame === frameNow ? null : (
          <Button variant="link" onPress={onUseFrame}>
            Use frame {frameNow + 1} instead
          </Button>
        )}
        <Button variant="link" onPress={onRemove}>
          Take off the slip
        </Button>
      </div>
    </section>
  );
}

/** What a {@link KeepEditor} takes. */
export interface KeepEditorProps {
  roundId: string;
  keep: DraftKeep;
  /** The usual words for what is good; left out for a keep of one's own. */
  usual?: string;
  onChange: (changes: Partial<Omit<DraftKeep, "id">>) => void;
  onRemove: () => void;
}

/** A strength as it is being named. */
export function KeepEditor({ roundId, keep, usual, onChange, onRemove }: KeepEditorProps) {
  return (
    <section id={rowPlace(keep.id)} className={styles.editor} aria-label="Keep">
      <RoomPhraseField
        label="Keep: what is good here"
        value={keep.text}
        maxLength={DRAFT_LIMITS.keepLength}
        onChange={(text) => onChange({ text })}
        words={usual === undefined || usual === keep.text ? [] : [usual]}
        wordsLabel="Usual words"
      />
      <VoiceNote
        roundId={roundId}
        lineId={keep.id}
        label={`Keep: ${usual ?? "in your own words"}`}
        voiceId={keep.voiceId}
        onChange={(voiceId) => onChange({ voiceId })}
      />
      <div className={styles.acts}>
        <Button variant="link" onPress={onRemove}>
          Leave it out
        </Button>
      </div>
    </section>
  );
}
