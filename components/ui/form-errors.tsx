"use client";

import { type MouseEvent, useEffect, useRef } from "react";
import styles from "./form.module.css";

/** Messages by field name. */
export type FieldErrors = Readonly<Record<string, string>>;

/** What a {@link FormErrors} takes. */
export interface FormErrorsProps {
  errors: FieldErrors;
  /** Default "1 thing to put right" and so on. */
  title?: string;
}

const CONTROL = "input:not([type=hidden]):not([tabindex='-1']), textarea, button, [tabindex='0']";

function goToField(event: MouseEvent<HTMLButtonElement>, name: string) {
  const scope = event.currentTarget.closest("form") ?? document;
  scope
    .querySelector(`[data-field="${CSS.escape(name)}"]`)
    ?.querySelector<HTMLElement>(CONTROL)
    ?.focus();
}

/** What must be put right before the form can be sent, each line leading to its field. Takes the focus when it appears. */
export function FormErrors({ errors, title }: FormErrorsProps) {
  const box = useRef<HTMLDivElement>(null);
  const entries = Object.entries(errors);
  const count = entries.length;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new set of errors takes the focus again
  useEffect(() => {
    if (count > 0) box.current?.focus();
  }, [errors]);
  if (count === 0) return null;
  return (
    <div ref={box} className={styles.errors} role="alert" tabIndex={-1}>
      <h2>{title ?? (count === 1 ? "1 thing to put right" : `${count} things to put right`)}</h2>
      <ul>
        {entries.map(([name, message]) => (
          <li key={name}>
            <button type="button" onClick={(event) => goToField(event, name)}>
              {message}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
