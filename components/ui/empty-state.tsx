import type { ReactNode } from "react";
import styles from "./empty-state.module.css";

/** What an {@link EmptyState} takes. */
export interface EmptyStateProps {
  /** What is not there yet, e.g. "No clip has come in". */
  title: string;
  /** What to do first, or what will fill this place. */
  children: ReactNode;
  action?: ReactNode;
}

/** Stands where a list would stand: says what is missing and what to do first. */
export function EmptyState({ title, children, action }: EmptyStateProps) {
  return (
    <div className={styles.empty}>
      <p className={styles.title}>{title}</p>
      <div className={styles.text}>{children}</div>
      {action ? <div className={styles.action}>{action}</div> : null}
    </div>
  );
}
