"use client";

import { Time } from "@internationalized/date";
import { DateInput, DateSegment } from "react-aria-components/DateField";
import { TimeField as AriaTimeField } from "react-aria-components/TimeField";
import styles from "./date-field.module.css";
import field from "./field.module.css";
import { FieldFrame, type FieldProps, fieldRoot } from "./field-frame";
import { joinClasses } from "./join-classes";

/** What a {@link TimeField} takes. Minutes since midnight, 0 to 1439; `null` stands for empty. */
export interface TimeFieldProps extends FieldProps {
  value?: number | null;
  defaultValue?: number | null;
  onChange?: (minute: number | null) => void;
  /** First and last minute that can be entered, both included. */
  min?: number;
  max?: number;
}

const asTime = (minute: number | null | undefined): Time | null =>
  minute === null || minute === undefined ? null : new Time(Math.floor(minute / 60), minute % 60);

/** A wall-clock time on the 24-hour clock. In a form it is sent as `HH:MM:SS`. */
export function TimeField(props: TimeFieldProps) {
  const { label, hint, error, isOptional, value, defaultValue, onChange, min, max } = props;
  return (
    <AriaTimeField
      {...fieldRoot(props)}
      {...(value === undefined ? {} : { value: asTime(value) })}
      {...(defaultValue === undefined ? {} : { defaultValue: asTime(defaultValue) })}
      onChange={(next) => onChange?.(next === null ? null : next.hour * 60 + next.minute)}
      minValue={asTime(min)}
      maxValue={asTime(max)}
      hourCycle={24}
      shouldForceLeadingZeros
      validationBehavior="aria"
    >
      <FieldFrame label={label} hint={hint} error={error} isOptional={isOptional}>
        <DateInput className={joinClasses(field.box, styles.segments, styles.time)}>
          {(segment) => <DateSegment segment={segment} className={styles.segment} />}
        </DateInput>
      </FieldFrame>
    </AriaTimeField>
  );
}
