"use client";

import { Radio, RadioGroup } from "react-aria-components/RadioGroup";
import styles from "./choice.module.css";
import { FieldFrame, type FieldProps, fieldRoot } from "./field-frame";
import type { Option } from "./option-item";

/** What a {@link RadioChoice} takes. `null` stands for nothing chosen. */
export interface RadioChoiceProps extends FieldProps {
  options: readonly Option[];
  value?: string | null;
  defaultValue?: string;
  onChange?: (value: string) => void;
  /** `row` (the default) for a few short words, `column` for sentences and hints. */
  layout?: "row" | "column";
}

/** One of a few choices, all in sight. */
export function RadioChoice(props: RadioChoiceProps) {
  const { label, hint, error, isOptional, options, value, defaultValue, onChange, layout = "row" } = props;
  return (
    <RadioGroup
      {...fieldRoot(props)}
      {...(value === undefined ? {} : { value })}
      {...(defaultValue === undefined ? {} : { defaultValue })}
      onChange={onChange}
      orientation={layout === "row" ? "horizontal" : "vertical"}
      validationBehavior="aria"
    >
      <FieldFrame label={label} hint={hint} error={error} isOptional={isOptional}>
        <div className={styles[layout]}>
          {options.map((option) =>
            layout === "row" ? (
              <Radio
                key={option.value}
                value={option.value}
                isDisabled={option.isDisabled}
                className={styles.option}
              >
                {option.label}
              </Radio>
            ) : (
              <ColumnRadio key={option.value} option={option} />
            ),
          )}
        </div>
      </FieldFrame>
    </RadioGroup>
  );
}

function ColumnRadio({ option }: { option: Option }) {
  return (
    <Radio value={option.value} isDisabled={option.isDisabled} className={styles.columnOption}>
      <svg className={styles.mark} viewBox="0 0 18 18" aria-hidden="true">
        <circle cx="9" cy="9" r="8" />
        <circle className={`${styles.inner} ${styles.dot}`} cx="9" cy="9" r="4.5" />
      </svg>
      <span>{option.label}</span>
      {option.hint ? <span className={styles.optionHint}>{option.hint}</span> : null}
    </Radio>
  );
}
