"use client";
import { Button as UsualButton } from "react-aria-components/Button";
import { Button } from "@/components/ui/button";
import { TextArea } from "@/components/ui/text-area";
import type { Checkpoint } from "@/server/domain/mechanics/checkpoint";
import { DRAFT_LIMITS, type DraftCorrection, type DraftKeep } from "@/server/domain/reviews/draft";
import styles from "./room-outline.module.css";

/** What a {@link CorrectionEditor} takes. */
export interface CorrectionEditorProps {
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
  const { correction, checkpoint, number, frameNow, onChange, onShow, onUseFrame, onRemove } = props;
  return (
    <section className={styles.editor} aria-label={`Correction ${number}: ${checkpoint.name}`}>
      <div>
        <TextArea
          label={`Correction ${number}: the cue`}
          rows={1}
          value={correction.cue}
          maxLength={DRAFT_LIMITS.cueLength}
          placeholder="In your own words"
          onChange={(cue) => onChange({ cue })}
        />
        <Usual
          label="Usual cues"
          words={checkpoint.cues}
          chosen={correction.cue}
          onPick={(cue) => onChange({ cue })}
        />
      </div>
      <div>
        <TextArea
          label="Drill"
          isOptional
          rows={1}
          value={correction.drill}
          maxLength={DRAFT_LIMITS.drillLength}
          onChange={(drill) => onChange({ drill })}
        />
        <Usual
          label="Usual drills"
          words={checkpoint.drills}
          chosen={correction.drill}
          onPick={(drill) => onChange({ drill })}
        />
      </div>
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
  keep: DraftKeep;
  onChange: (text: string) => void;
  onRemove: () => void;
}

/** A strength as it is being named. */
export function KeepEditor({ keep, onChange, onRemove }: KeepEditorProps) {
  return (
    <section className={styles.editor} aria-label="Keep">
      <TextArea
        label="Keep: what is good here"
        rows={1}
        value={keep.text}
        maxLength={DRAFT_LIMITS.keepLength}
        onChange={onChange}
      />
      <div className={styles.acts}>
        <Button variant="link" onPress={onRemove}>
          Leave it out
        </Button>
      </div>
    </section>
  );
}

interface UsualProps {
  label: string;
  words: readonly string[];
  chosen: string;
  onPick: (words: string) => void;
}

function Usual({ label, words, chosen, onPick }: UsualProps) {
  const others = words.filter((each) => each !== chosen);
  if (others.length === 0) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would be announced as part of a form
    <div className={styles.usual} role="group" aria-label={label}>
      {others.map((each) => (
        <UsualButton key={each} className={styles.usualWord} onPress={() => onPick(each)}>
          {each}
        </UsualButton>
      ))}
    </div>
  );
}
