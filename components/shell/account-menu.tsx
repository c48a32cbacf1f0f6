"use client";

import { Button } from "react-aria-components/Button";
import { MenuTrigger } from "react-aria-components/Menu";
import { Icon } from "../ui/icons";
import { type MenuEntry, MenuList } from "../ui/menu";
import styles from "./header.module.css";

/** What an {@link AccountMenu} takes. */
export interface AccountMenuProps {
  /** Who is signed in. */
  name: string;
  /** As whom they act here, e.g. "Coach". */
  role?: string;
  entries: readonly MenuEntry[];
}

/** Who is signed in, and what they can do about it. */
export function AccountMenu({ name, role, entries }: AccountMenuProps) {
  return (
    <MenuTrigger>
      <Button className={styles.account} aria-label={`Account: ${name}${role ? `, ${role}` : ""}`}>
        <span className={styles.accountName}>{name}</span>
        <span className={styles.accountShort} aria-hidden="true">
          {initials(name)}
        </span>
        <Icon name="down" />
      </Button>
      <MenuList label="Account" entries={entries} heading={role ? `${name}, ${role}` : name} />
    </MenuTrigger>
  );
}

function initials(name: string): string {
  const words = name.split(/\s+/).filter(Boolean);
  return [words[0], words.length > 1 ? words.at(-1) : ""].map((word) => word?.[0] ?? "").join("");
}
