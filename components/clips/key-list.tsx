"use client";
import { switchLetterKeys, useLetterKeys } from "@/components/ui/letter-keys";
import { SwitchField } from "@/components/ui/switch-field";
import styles from "./player.module.css";
import { CLIP_KEYS } from "./use-clip-keys";

/** The keys that drive a clip, folded away; not shown where there is no keyboard. */
export function KeyList({ hasMarks }: { hasMarks: boolean }) {
  const isOn = useLetterKeys();
  return (
    <details className={styles.keys}>
      <summary>Keys</summary>
      <dl>
        {CLIP_KEYS.filter(([key]) => hasMarks || key !== "1 to 6").map(([key, act]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{act}</dd>
          </div>
        ))}
      </dl>
      <SwitchField
        label="Letters, digits and signs act at once"
        isSelected={isOn}
        onChange={switchLetterKeys}
      />
    </details>
  );
}
