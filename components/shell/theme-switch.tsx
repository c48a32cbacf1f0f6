"use client";

import { useState } from "react";
import { Button } from "react-aria-components/Button";
import { Menu, MenuItem, MenuTrigger } from "react-aria-components/Menu";
import { Popover } from "react-aria-components/Popover";
import { Icon } from "../ui/icons";
import popover from "../ui/popover.module.css";
import styles from "./header.module.css";
import { readTheme, THEMES, type Theme, themeAttribute, themeCookie } from "./theme";

const WORDS: Record<Theme, string> = { light: "Light", dark: "Dark", system: "As the system" };

function applyTheme(theme: Theme) {
  const attribute = themeAttribute(theme);
  if (attribute === undefined) delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = attribute;
  // biome-ignore lint/suspicious/noDocumentCookie: the cookie store is not in every browser a family may have
  document.cookie = themeCookie(theme);
}

/** Light, dark, or as the system has it. Takes effect at once and is kept in a cookie. */
export function ThemeSwitch({ theme }: { theme: Theme }) {
  const [chosen, setChosen] = useState(theme);
  return (
    <MenuTrigger>
      <Button className={styles.iconButton} aria-label={`Theme: ${WORDS[chosen].toLowerCase()}`}>
        <Icon name="halfDisc" />
      </Button>
      <Popover className={popover.popover} placement="bottom end" offset={4}>
        <Menu
          className={popover.list}
          aria-label="Theme"
          selectionMode="single"
          disallowEmptySelection
          selectedKeys={[chosen]}
          onSelectionChange={(keys) => {
            const next = readTheme(String([...keys][0]));
            setChosen(next);
            applyTheme(next);
          }}
        >
          {THEMES.map((each) => (
            <MenuItem key={each} id={each} textValue={WORDS[each]} className={popover.item}>
              {({ isSelected }) => (
                <>
                  {isSelected ? <Icon name="tick" /> : null}
                  <span className={popover.words}>{WORDS[each]}</span>
                </>
              )}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
