import type { ReactNode } from "react";
import { joinClasses } from "../ui/join-classes";
import { SkipLink } from "../ui/skip-link";
import type { NavItem } from "./current-link";
import header from "./header.module.css";
import { NavLinks } from "./nav-links";
import styles from "./shell.module.css";
import type { Theme } from "./theme";
import { ThemeSwitch } from "./theme-switch";
import { Wordmark } from "./wordmark";

/** What both shells take. */
export interface ShellProps {
  nav: readonly NavItem[];
  /** Where the wordmark leads. */
  homeHref: string;
  /** From the cookie: `readTheme(cookies().get(THEME_COOKIE)?.value)`. */
  theme: Theme;
  /** Who is signed in and what they can do about it: an `AccountMenu`. */
  account?: ReactNode;
  /** A search box or a button for it. */
  search?: ReactNode;
  /** What holds for the whole screen and must not be missed, above the page. */
  banner?: ReactNode;
  footer?: ReactNode;
  children: ReactNode;
}

/** Head, page and foot; `family` puts the navigation at the thumb on a phone, `staff` under the head. */
export function Shell({ kind, ...props }: ShellProps & { kind: "staff" | "family" }) {
  return (
    <div className={joinClasses(styles.shell, styles[kind])}>
      <SkipLink />
      <header className={styles.header} data-print="no">
        <div className={styles.bar}>
          <Wordmark href={props.homeHref} />
          <NavLinks items={props.nav} label="Main" />
          <div className={header.tools}>
            {props.search}
            <ThemeSwitch theme={props.theme} />
            {props.account}
          </div>
        </div>
      </header>
      {props.banner ? <div className={styles.banner}>{props.banner}</div> : null}
      <main id="main" tabIndex={-1} className={styles.main}>
        {props.children}
      </main>
      {props.footer ? <footer className={styles.footer}>{props.footer}</footer> : null}
    </div>
  );
}
