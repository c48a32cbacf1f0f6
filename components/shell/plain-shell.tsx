import type { ReactNode } from "react";
import { joinClasses } from "../ui/join-classes";
import { SkipLink } from "../ui/skip-link";
import header from "./header.module.css";
import styles from "./shell.module.css";
import type { Theme } from "./theme";
import { ThemeSwitch } from "./theme-switch";
import { Wordmark } from "./wordmark";

/** What a {@link PlainShell} takes. */
export interface PlainShellProps {
  homeHref: string;
  theme: Theme;
  footer?: ReactNode;
  /** As wide as a page to read, for more than a form. */
  isWide?: boolean;
  children: ReactNode;
}

/** Around what is seen before signing in: the name, one narrow column, nothing else. */
export function PlainShell({ homeHref, theme, footer, isWide, children }: PlainShellProps) {
  return (
    <div className={joinClasses(styles.shell, isWide ? styles.reading : styles.plain)}>
      <SkipLink />
      <header className={styles.header} data-print="no">
        <div className={styles.bar}>
          <Wordmark href={homeHref} />
          <div className={header.tools}>
            <ThemeSwitch theme={theme} />
          </div>
        </div>
      </header>
      <main id="main" tabIndex={-1} className={styles.main}>
        {children}
      </main>
      {footer ? <footer className={styles.footer}>{footer}</footer> : null}
    </div>
  );
}
