import { type ReactNode, useId } from "react";
import { joinClasses } from "./join-classes";
import styles from "./section.module.css";

/** What a {@link Section} takes. */
export interface SectionProps {
  title: string;
  /** How many there are, shown quietly beside the title. */
  count?: number | string;
  /** Beside the heading: a legend, a link, a small action. */
  aside?: ReactNode;
  /** Default 2; 3 within another section. */
  level?: 2 | 3;
  /** To be linked to. */
  id?: string;
  className?: string;
  children: ReactNode;
}

/** A part of a page under a hairline, named by its heading. */
export function Section({ title, count, aside, level = 2, id, className, children }: SectionProps) {
  const headingId = useId();
  const Heading = level === 2 ? "h2" : "h3";
  return (
    <section id={id} aria-labelledby={headingId} className={joinClasses(styles.section, className)}>
      <div className={styles.head}>
        <Heading className={styles.title}>
          <span id={headingId}>{title}</span>
          {count === undefined ? null : <span className={styles.count}>{count}</span>}
        </Heading>
        {aside ? <div className={styles.aside}>{aside}</div> : null}
      </div>
      {children}
    </section>
  );
}
