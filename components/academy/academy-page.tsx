import type { ReactNode } from "react";
import styles from "./academy-page.module.css";

/** A page of the academy's settings: read from top to bottom, so no wider than its lines need. */
export function AcademyPage({ children }: { children: ReactNode }) {
  return <div className={styles.page}>{children}</div>;
}
