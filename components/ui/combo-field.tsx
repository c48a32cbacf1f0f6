"use client";

import { Button } from "react-aria-components/Button";
import { ComboBox } from "react-aria-components/ComboBox";
import { Group } from "react-aria-components/Group";
import { Input } from "react-aria-components/Input";
import { ListBox } from "react-aria-components/ListBox";
import { Popover } from "react-aria-components/Popover";
import field from "./field.module.css";
import { FieldFrame, type FieldProps, fieldRoot } from "./field-frame";
import { Icon } from "./icons";
import { type Option, OptionItem } from "./option-item";
import popover from "./popover.module.css";

/** What a {@link ComboField} takes. `null` stands for nothing chosen. */
export interface ComboFieldProps extends FieldProps {
  options: readonly Option[];
  value?: string | null;
  defaultValue?: string;
  onChange?: (value: string | null) => void;
  /** Called with what is typed, for choices that are fetched; the given options are then shown unfiltered. */
  onType?: (text: string) => void;
  placeholder?: string;
  /** Said when nothing fits. Default "Nothing fits". */
  emptyText?: string;
}

/** One of many choices, found by typing part of it. */
export function ComboField(props: ComboFieldProps) {
  const { label, hint, error, isOptional, options, value, defaultValue, onChange, onType } = props;
  const items = options.map((option) => ({ ...option, id: option.value }));
  return (
    <ComboBox
      {...fieldRoot(props)}
      {...(value === undefined ? {} : { value })}
      {...(defaultValue === undefined ? {} : { defaultValue })}
      {...(onType === undefined ? { defaultItems: items } : { items, onInputChange: onType })}
      onChange={(key) => onChange?.(key === null ? null : String(key))}
      allowsEmptyCollection
      menuTrigger="focus"
      validationBehavior="aria"
    >
      <FieldFrame label={label} hint={hint} error={error} isOptional={isOptional}>
        <Group className={field.box}>
          <Input className={field.input} placeholder={props.placeholder} />
          <Button className={field.icon}>
            <Icon name="down" />
          </Button>
        </Group>
      </FieldFrame>
      <Popover className={popover.popover} offset={4}>
        <ListBox
          className={popover.list}
          renderEmptyState={() => <div className={popover.empty}>{props.emptyText ?? "Nothing fits"}</div>}
        >
          {(option: Option) => <OptionItem option={option} />}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
