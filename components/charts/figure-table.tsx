import type { ReactNode } from "react";
import styles from "./chart.module.css";

/** The same figures as a table, folded away under its chart but always there. */
export function FigureTable({ children }: { children: ReactNode }) {
  return (
    <details className={styles.table}>
      <summary>The same as a table</summary>
      {children}
    </details>
  );
}
