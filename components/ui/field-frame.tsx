"use client";

import type { ReactNode } from "react";
import { FieldError } from "react-aria-components/FieldError";
import { Label } from "react-aria-components/Label";
import { Text } from "react-aria-components/Text";
import styles from "./field.module.css";
import { joinClasses } from "./join-classes";

/** What every field takes. */
export interface FieldProps {
  label: string;
  /** Name in a form; also what the error summary finds the field by. */
  name?: string;
  /** One quiet line under the label. */
  hint?: ReactNode;
  /** What is wrong and what it should be; shown under the control and read with it. */
  error?: string | undefined;
  isRequired?: boolean;
  /** Shows the word "optional" beside the label. */
  isOptional?: boolean;
  isDisabled?: boolean;
  autoFocus?: boolean;
  className?: string;
}

/** The attributes a field's root shares: how the error summary finds it, its state, its looks. */
export function fieldRoot({ name, error, isRequired, isDisabled, autoFocus, className }: FieldProps) {
  return {
    name,
    isRequired,
    isDisabled,
    autoFocus,
    ...(error === undefined ? {} : { isInvalid: true }),
    "data-field": name,
    className: joinClasses(styles.field, className),
  };
}

/** Label and hint above a control, its error below. Stands inside a field's root. */
export function FieldFrame({
  label,
  hint,
  error,
  isOptional,
  children,
}: Pick<FieldProps, "label" | "hint" | "error" | "isOptional"> & { children: ReactNode }) {
  return (
    <>
      <Label className={styles.label}>
        {label}
        {isOptional ? " " : null}
        {isOptional ? <span className={styles.optional}>optional</span> : null}
      </Label>
      {hint ? (
        <Text slot="description" className={styles.hint}>
          {hint}
        </Text>
      ) : null}
      {children}
      <FieldError className={styles.error}>{error}</FieldError>
    </>
  );
}
