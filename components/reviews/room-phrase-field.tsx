"use client";
import type { KeyboardEvent } from "react";
import { Button as UsualButton } from "react-aria-components/Button";
import { TextArea } from "@/components/ui/text-area";
import styles from "./room-outline.module.css";
import { phraseAct } from "./room-phrases";
import { backToClip } from "./use-row-in-hand";

/** What a {@link RoomPhraseField} takes. */
export interface RoomPhraseFieldProps {
  label: string;
  value: string;
  onChange: (text: string) => void;
  maxLength: number;
  placeholder?: string;
  isOptional?: boolean;
  /** The academy's usual words, and what they are called. */
  words: readonly string[];
  wordsLabel: string;
}

/** A few words of one's own, or usual ones by their number, edited freely; Enter goes back to the clip. */
export function RoomPhraseField(props: RoomPhraseFieldProps) {
  const { words, wordsLabel, value, onChange, ...field } = props;
  const onKeyDownCapture = (event: KeyboardEvent<HTMLDivElement>) => {
    if (!(event.target instanceof HTMLTextAreaElement)) return;
    const { key, code, altKey, shiftKey, ctrlKey, metaKey } = event;
    const { isComposing } = event.nativeEvent;
    const act = phraseAct({ key, code, altKey, shiftKey, ctrlKey, metaKey, isComposing }, value, words);
    if (act === null) return;
    event.preventDefault();
    event.stopPropagation();
    if (act.kind === "pick") onChange(act.words);
    else backToClip();
  };
  return (
    <div onKeyDownCapture={onKeyDownCapture}>
      <TextArea {...field} value={value} onChange={onChange} rows={1} />
      {words.length === 0 ? null : (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset would be announced as part of a form
        <div className={styles.usual} role="group" aria-label={wordsLabel}>
          {words.map((each, index) => (
            <UsualButton
              key={each}
              className={styles.usualWord}
              aria-pressed={each === value}
              // Tab goes on to the next field: the arrows of this one reach every word.
              excludeFromTabOrder
              onPress={() => onChange(each)}
            >
              <span className={styles.usualNumber} aria-hidden="true">
                {index + 1}
              </span>
              {each}
            </UsualButton>
          ))}
        </div>
      )}
    </div>
  );
}
