"use client";

import type { ReactNode } from "react";
import { CheckboxButton, CheckboxField } from "react-aria-components/Checkbox";
import { FieldError } from "react-aria-components/FieldError";
import { Text } from "react-aria-components/Text";
import styles from "./choice.module.css";
import field from "./field.module.css";
import { fieldRoot } from "./field-frame";
import { joinClasses } from "./join-classes";

/** What a {@link Checkbox} takes. */
export interface CheckboxProps {
  /** The claim that a tick makes true. */
  label: ReactNode;
  name?: string;
  /** What is sent in a form when ticked. */
  value?: string;
  hint?: ReactNode;
  error?: string | undefined;
  isSelected?: boolean;
  defaultSelected?: boolean;
  isIndeterminate?: boolean;
  onChange?: (isSelected: boolean) => void;
  isRequired?: boolean;
  isDisabled?: boolean;
  className?: string;
}

/** Something that is so or is not so. */
export function Checkbox(props: CheckboxProps) {
  const { label, hint, error, name, className, isRequired, isDisabled, ...rest } = props;
  return (
    <CheckboxField
      {...rest}
      {...fieldRoot({ label: "", name, error, isRequired, isDisabled, className })}
      validationBehavior="aria"
    >
      <CheckboxButton className={styles.check}>
        <svg className={styles.mark} viewBox="0 0 18 18" aria-hidden="true">
          <rect x="1" y="1" width="16" height="16" rx="2" />
          <path className={`${styles.inner} ${styles.tick}`} d="M4.5 9.5l3 3 6-7.5" />
          <path className={`${styles.inner} ${styles.dash}`} d="M5 9h8" />
        </svg>
        <span>{label}</span>
      </CheckboxButton>
      {hint ? (
        <Text slot="description" className={joinClasses(field.hint, styles.checkNote)}>
          {hint}
        </Text>
      ) : null}
      <FieldError className={joinClasses(field.error, styles.checkNote)}>{error}</FieldError>
    </CheckboxField>
  );
}
