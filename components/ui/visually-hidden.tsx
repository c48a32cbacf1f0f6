import type { ReactNode } from "react";
import styles from "./visually-hidden.module.css";

/** Text for those who hear the page. By class, so that a strict content policy lets it through. */
export function VisuallyHidden({ children }: { children: ReactNode }) {
  return <span className={styles.hidden}>{children}</span>;
}
