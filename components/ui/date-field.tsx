"use client";

import { type CalendarDate, parseDate } from "@internationalized/date";
import { Button } from "react-aria-components/Button";
import {
  Calendar,
  CalendarCell,
  CalendarGrid,
  CalendarGridBody,
  CalendarGridHeader,
  CalendarHeaderCell,
} from "react-aria-components/Calendar";
import { DateInput, DateSegment } from "react-aria-components/DateField";
import { DatePicker } from "react-aria-components/DatePicker";
import { Dialog } from "react-aria-components/Dialog";
import { Group } from "react-aria-components/Group";
import { Heading } from "react-aria-components/Heading";
import { Popover } from "react-aria-components/Popover";
import styles from "./date-field.module.css";
import field from "./field.module.css";
import { FieldFrame, type FieldProps, fieldRoot } from "./field-frame";
import { Icon } from "./icons";
import { joinClasses } from "./join-classes";
import popover from "./popover.module.css";

/** What a {@link DateField} takes. Days are `YYYY-MM-DD`; `null` stands for empty. */
export interface DateFieldProps extends FieldProps {
  value?: string | null;
  defaultValue?: string | null;
  onChange?: (day: string | null) => void;
  /** First and last day that can be chosen, both included. */
  min?: string;
  max?: string;
  /** Days that cannot be chosen although they lie between the bounds. */
  isUnavailable?: (day: string) => boolean;
}

const asDate = (day: string | null | undefined): CalendarDate | null => (day ? parseDate(day) : null);

/** A calendar day, typed in its parts or picked from a month. In a form it is sent as `YYYY-MM-DD`. */
export function DateField(props: DateFieldProps) {
  const { label, hint, error, isOptional, value, defaultValue, onChange, min, max, isUnavailable } = props;
  return (
    <DatePicker
      {...fieldRoot(props)}
      {...(value === undefined ? {} : { value: asDate(value) })}
      {...(defaultValue === undefined ? {} : { defaultValue: asDate(defaultValue) })}
      onChange={(next) => onChange?.(next === null ? null : next.toString())}
      minValue={asDate(min)}
      maxValue={asDate(max)}
      isDateUnavailable={isUnavailable ? (date) => isUnavailable(date.toString()) : undefined}
      validationBehavior="aria"
      granularity="day"
      shouldForceLeadingZeros
    >
      <FieldFrame label={label} hint={hint} error={error} isOptional={isOptional}>
        <Group className={joinClasses(field.box, styles.narrow)}>
          <DateInput className={styles.segments}>
            {(segment) => <DateSegment segment={segment} className={styles.segment} />}
          </DateInput>
          <Button className={field.icon}>
            <Icon name="calendar" />
          </Button>
        </Group>
      </FieldFrame>
      <Popover className={popover.popover} offset={4}>
        <Dialog>
          <Month />
        </Dialog>
      </Popover>
    </DatePicker>
  );
}

function Month() {
  return (
    <Calendar className={styles.calendar}>
      <div className={styles.head}>
        <Button slot="previous" className={styles.step}>
          <Icon name="back" />
        </Button>
        <Heading className={styles.heading} />
        <Button slot="next" className={styles.step}>
          <Icon name="forward" />
        </Button>
      </div>
      <CalendarGrid className={styles.grid} weekdayStyle="short">
        <CalendarGridHeader>
          {(weekday) => <CalendarHeaderCell className={styles.weekday}>{weekday}</CalendarHeaderCell>}
        </CalendarGridHeader>
        <CalendarGridBody>{(date) => <CalendarCell date={date} className={styles.cell} />}</CalendarGridBody>
      </CalendarGrid>
    </Calendar>
  );
}
