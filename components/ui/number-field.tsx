"use client";

import { Button } from "react-aria-components/Button";
import { Group } from "react-aria-components/Group";
import { Input } from "react-aria-components/Input";
import { NumberField as AriaNumberField } from "react-aria-components/NumberField";
import styles from "./field.module.css";
import { FieldFrame, type FieldProps, fieldRoot } from "./field-frame";
import { Icon } from "./icons";
import { joinClasses } from "./join-classes";

/** What a {@link NumberField} takes. `null` stands for empty. */
export interface NumberFieldProps extends FieldProps {
  value?: number | null;
  defaultValue?: number | null;
  onChange?: (value: number | null) => void;
  min?: number;
  max?: number;
  /** Default 1. */
  step?: number;
  /** Shown after the number, e.g. "min". */
  unit?: string;
  formatOptions?: Intl.NumberFormatOptions;
}

/** A number, typed or stepped by its two buttons, the arrow keys or Page Up and Page Down. */
export function NumberField(props: NumberFieldProps) {
  const { label, hint, error, isOptional, unit, min, max, step = 1, value, defaultValue, onChange } = props;
  return (
    <AriaNumberField
      {...fieldRoot(props)}
      {...(value === undefined ? {} : { value: value ?? Number.NaN })}
      {...(defaultValue === undefined ? {} : { defaultValue: defaultValue ?? Number.NaN })}
      onChange={(next) => onChange?.(Number.isNaN(next) ? null : next)}
      minValue={min}
      maxValue={max}
      step={step}
      formatOptions={props.formatOptions ?? { useGrouping: false }}
      validationBehavior="aria"
      isWheelDisabled
    >
      <FieldFrame label={label} hint={hint} error={error} isOptional={isOptional}>
        <Group className={joinClasses(styles.box, styles.number)}>
          <Input className={styles.input} />
          {unit ? <span className={styles.affix}>{unit}</span> : null}
          <Button slot="decrement" className={styles.icon}>
            <Icon name="minus" />
          </Button>
          <Button slot="increment" className={styles.icon}>
            <Icon name="plus" />
          </Button>
        </Group>
      </FieldFrame>
    </AriaNumberField>
  );
}
