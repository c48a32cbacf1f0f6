"use client";

import type { ReactNode } from "react";
import { Header } from "react-aria-components/Header";
import { Menu as AriaMenu, MenuItem, MenuSection, MenuTrigger } from "react-aria-components/Menu";
import { Popover } from "react-aria-components/Popover";
import { Button } from "./button";
import type { ButtonLook } from "./button-look";
import { Icon } from "./icons";
import { joinClasses } from "./join-classes";
import styles from "./popover.module.css";

/** One line of a menu: an act, or a way to another page. */
export interface MenuEntry {
  key: string;
  label: string;
  hint?: string;
  href?: string;
  onAction?: () => void;
  isDisabled?: boolean;
}

/** What a {@link Menu} takes. */
export interface MenuProps extends ButtonLook {
  /** What the button says. */
  label: ReactNode;
  /** What the button is called when its label alone would not tell. */
  accessibleLabel?: string;
  entries: readonly MenuEntry[];
}

/** A button that opens a list of acts. */
export function Menu({ label, accessibleLabel, entries, ...look }: MenuProps) {
  return (
    <MenuTrigger>
      <Button {...look} aria-label={accessibleLabel}>
        {label}
        <Icon name="down" />
      </Button>
      <MenuList label={accessibleLabel ?? (typeof label === "string" ? label : "Menu")} entries={entries} />
    </MenuTrigger>
  );
}

/** The list that a menu's trigger opens; for triggers of one's own. */
export function MenuList(props: { label: string; entries: readonly MenuEntry[]; heading?: string }) {
  const items = props.entries.map((entry) => <Entry key={entry.key} entry={entry} />);
  return (
    <Popover className={styles.popover} placement="bottom end" offset={4}>
      <AriaMenu className={styles.list} aria-label={props.label}>
        {props.heading ? (
          <MenuSection>
            <Header className={styles.empty}>{props.heading}</Header>
            {items}
          </MenuSection>
        ) : (
          items
        )}
      </AriaMenu>
    </Popover>
  );
}

function Entry({ entry }: { entry: MenuEntry }) {
  return (
    <MenuItem
      id={entry.key}
      textValue={entry.label}
      href={entry.href}
      onAction={entry.onAction}
      isDisabled={entry.isDisabled}
      className={joinClasses(styles.item, styles.plain)}
    >
      <span className={styles.words}>
        {entry.label}
        {entry.hint ? <span className={styles.hint}>{entry.hint}</span> : null}
      </span>
    </MenuItem>
  );
}
