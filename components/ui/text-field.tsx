"use client";

import { Input } from "react-aria-components/Input";
import { TextField as AriaTextField } from "react-aria-components/TextField";
import styles from "./field.module.css";
import { FieldFrame, type FieldProps, fieldRoot } from "./field-frame";

/** What a {@link TextField} takes. */
export interface TextFieldProps extends FieldProps {
  type?: "text" | "email" | "password" | "tel" | "url";
  value?: string;
  defaultValue?: string;
  onChange?: (value: string) => void;
  onBlur?: () => void;
  autoComplete?: string;
  inputMode?: "text" | "email" | "tel" | "numeric" | "decimal" | "url";
  maxLength?: number;
  placeholder?: string;
  /** A unit or a sign after the text, e.g. "a year". */
  affix?: string;
  isReadOnly?: boolean;
}

/** One line of text. */
export function TextField(props: TextFieldProps) {
  const { label, hint, error, isOptional, placeholder, affix, name, className, isRequired, ...rest } = props;
  return (
    <AriaTextField {...rest} {...fieldRoot(props)} validationBehavior="aria">
      <FieldFrame label={label} hint={hint} error={error} isOptional={isOptional}>
        <div className={styles.box}>
          <Input className={styles.input} placeholder={placeholder} />
          {affix ? <span className={styles.affix}>{affix}</span> : null}
        </div>
      </FieldFrame>
    </AriaTextField>
  );
}
