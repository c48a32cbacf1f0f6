"use client";

import { TextArea as AriaTextArea } from "react-aria-components/TextArea";
import { TextField as AriaTextField } from "react-aria-components/TextField";
import styles from "./field.module.css";
import { FieldFrame, type FieldProps, fieldRoot } from "./field-frame";
import { joinClasses } from "./join-classes";

/** What a {@link TextArea} takes. */
export interface TextAreaProps extends FieldProps {
  value?: string;
  defaultValue?: string;
  onChange?: (value: string) => void;
  onBlur?: () => void;
  maxLength?: number;
  placeholder?: string;
  /** Lines shown before it grows. Default 4. */
  rows?: number;
}

/** Several lines of text; grows with what is written where the browser can. */
export function TextArea(props: TextAreaProps) {
  const {
    label,
    hint,
    error,
    isOptional,
    placeholder,
    rows = 4,
    name,
    className,
    isRequired,
    ...rest
  } = props;
  return (
    <AriaTextField {...rest} {...fieldRoot(props)} validationBehavior="aria">
      <FieldFrame label={label} hint={hint} error={error} isOptional={isOptional}>
        <div className={styles.box}>
          <AriaTextArea
            className={joinClasses(styles.input, styles.area)}
            placeholder={placeholder}
            rows={rows}
          />
        </div>
      </FieldFrame>
    </AriaTextField>
  );
}
