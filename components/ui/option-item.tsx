"use client";

import { ListBoxItem } from "react-aria-components/ListBox";
import { Text } from "react-aria-components/Text";
import { Icon } from "./icons";
import styles from "./popover.module.css";

/** One choice of a list. */
export interface Option {
  value: string;
  label: string;
  /** A second, quieter line. */
  hint?: string;
  isDisabled?: boolean;
}

/** A choice as it stands in an open list; the chosen one bears a tick and heavier type. */
export function OptionItem({ option }: { option: Option }) {
  return (
    <ListBoxItem
      id={option.value}
      textValue={option.label}
      isDisabled={option.isDisabled}
      className={styles.item}
    >
      {({ isSelected }) => (
        <>
          {isSelected ? <Icon name="tick" /> : null}
          <span className={styles.words}>
            <Text slot="label">{option.label}</Text>
            {option.hint ? (
              <Text slot="description" className={styles.hint}>
                {option.hint}
              </Text>
            ) : null}
          </span>
        </>
      )}
    </ListBoxItem>
  );
}
