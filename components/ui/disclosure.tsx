import type { ReactNode } from "react";
import styles from "./disclosure.module.css";
import { Icon } from "./icons";

/** What a {@link Disclosure} takes. */
export interface DisclosureProps {
  /** The line in sight. */
  summary: ReactNode;
  /** What it opens to. */
  children: ReactNode;
}

/** One line with more behind it, opened by the browser itself: it works before any script and in a printout. */
export function Disclosure({ summary, children }: DisclosureProps) {
  return (
    <details className={styles.disclosure}>
      <summary className={styles.summary}>
        <Icon name="forward" />
        <div>{summary}</div>
      </summary>
      <div className={styles.body}>{children}</div>
    </details>
  );
}
