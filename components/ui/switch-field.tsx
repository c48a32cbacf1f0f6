"use client";

import { Switch } from "react-aria-components/Switch";
import styles from "./choice.module.css";

/** What a {@link SwitchField} takes. */
export interface SwitchFieldProps {
  label: string;
  name?: string;
  isSelected?: boolean;
  defaultSelected?: boolean;
  onChange?: (isSelected: boolean) => void;
  isDisabled?: boolean;
  /** Words for the two positions. Default "on" and "off". */
  words?: { on: string; off: string };
}

/** A setting that takes effect at once. */
export function SwitchField({ label, words = { on: "on", off: "off" }, ...rest }: SwitchFieldProps) {
  return (
    <Switch {...rest} className={styles.switch}>
      {({ isSelected }) => (
        <>
          <svg className={styles.track} viewBox="0 0 36 20" aria-hidden="true">
            <rect x="1" y="1" width="34" height="18" rx="3" />
            <rect className={styles.knob} x="4" y="4" width="14" height="12" rx="1.5" />
          </svg>
          <span>{label}</span>
          <span className={styles.state} aria-hidden="true">
            {isSelected ? words.on : words.off}
          </span>
        </>
      )}
    </Switch>
  );
}
