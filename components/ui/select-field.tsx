"use client";

import { Button } from "react-aria-components/Button";
import { ListBox } from "react-aria-components/ListBox";
import { Popover } from "react-aria-components/Popover";
import { Select, SelectValue } from "react-aria-components/Select";
import field from "./field.module.css";
import { FieldFrame, type FieldProps, fieldRoot } from "./field-frame";
import { Icon } from "./icons";
import { joinClasses } from "./join-classes";
import { type Option, OptionItem } from "./option-item";
import popover from "./popover.module.css";
import styles from "./select-field.module.css";

/** What a {@link SelectField} takes. `null` stands for nothing chosen. */
export interface SelectFieldProps extends FieldProps {
  options: readonly Option[];
  value?: string | null;
  defaultValue?: string;
  onChange?: (value: string | null) => void;
  /** Shown while nothing is chosen. Default "Choose". */
  placeholder?: string;
}

/** One of a few choices, behind a button. For two to four choices use `RadioChoice`, for many `ComboField`. */
export function SelectField(props: SelectFieldProps) {
  const { label, hint, error, isOptional, options, value, defaultValue, onChange, placeholder } = props;
  return (
    <Select
      {...fieldRoot(props)}
      {...(value === undefined ? {} : { value })}
      {...(defaultValue === undefined ? {} : { defaultValue })}
      onChange={(key) => onChange?.(key === null ? null : String(key))}
      placeholder={placeholder ?? "Choose"}
      validationBehavior="aria"
    >
      <FieldFrame label={label} hint={hint} error={error} isOptional={isOptional}>
        <Button className={joinClasses(field.box, styles.button)}>
          <SelectValue className={styles.value}>
            {({ selectedText, isPlaceholder, defaultChildren }) =>
              isPlaceholder ? defaultChildren : selectedText
            }
          </SelectValue>
          <span className={styles.arrow}>
            <Icon name="down" />
          </span>
        </Button>
      </FieldFrame>
      <Popover className={popover.popover} offset={4}>
        <ListBox className={popover.list} items={options.map((option) => ({ ...option, id: option.value }))}>
          {(option) => <OptionItem option={option} />}
        </ListBox>
      </Popover>
    </Select>
  );
}
