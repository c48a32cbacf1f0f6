"use client";

import { Button } from "react-aria-components/Button";
import { Input } from "react-aria-components/Input";
import { Label } from "react-aria-components/Label";
import { SearchField as AriaSearchField } from "react-aria-components/SearchField";
import styles from "./field.module.css";
import { Icon } from "./icons";
import { joinClasses } from "./join-classes";
import search from "./search-field.module.css";

/** What a {@link SearchField} takes. */
export interface SearchFieldProps {
  /** What is looked through, e.g. "Search athletes". */
  label: string;
  /** The label is only read out; the placeholder then shows it. */
  isLabelHidden?: boolean;
  name?: string;
  value?: string;
  defaultValue?: string;
  onChange?: (text: string) => void;
  /** Enter was pressed. */
  onSubmit?: (text: string) => void;
  className?: string;
}

/** A box to narrow a list by. Escape empties it. */
export function SearchField({ label, isLabelHidden, className, ...rest }: SearchFieldProps) {
  return (
    <AriaSearchField
      {...rest}
      {...(isLabelHidden ? { "aria-label": label } : {})}
      className={joinClasses(styles.field, search.field, className)}
    >
      {isLabelHidden ? null : <Label className={styles.label}>{label}</Label>}
      <div className={styles.box}>
        <span className={joinClasses(styles.affix, search.glass)}>
          <Icon name="search" />
        </span>
        <Input
          className={joinClasses(styles.input, search.input)}
          placeholder={isLabelHidden ? label : undefined}
        />
        <Button className={joinClasses(styles.icon, search.clear)}>
          <Icon name="close" />
        </Button>
      </div>
    </AriaSearchField>
  );
}
