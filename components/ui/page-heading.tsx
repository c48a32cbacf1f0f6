import type { ReactNode } from "react";
import styles from "./page-heading.module.css";

/** What a {@link PageHeading} takes. */
export interface PageHeadingProps {
  /** The one question that this page answers; the page's h1. */
  question: string;
  /** Where and when this is, e.g. "Thu 26 Nov, North site", or a trail of links. */
  place?: ReactNode;
  /** One or two quiet lines under the question. */
  detail?: ReactNode;
  /** What can be done here; at most one of them primary. */
  actions?: ReactNode;
}

/** The head of a page: where one is, what the page answers, what can be done. */
export function PageHeading({ question, place, detail, actions }: PageHeadingProps) {
  return (
    <header className={styles.heading}>
      <div className={styles.words}>
        {place ? <div className={styles.place}>{place}</div> : null}
        <h1>{question}</h1>
        {detail ? <div className={styles.detail}>{detail}</div> : null}
      </div>
      {actions ? (
        <div className={styles.actions} data-print="no">
          {actions}
        </div>
      ) : null}
    </header>
  );
}
