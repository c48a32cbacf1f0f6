import type { ReactNode } from "react";
import { joinClasses } from "./join-classes";
import styles from "./notice.module.css";

/**
 * `info` explains, `attention` asks for something to be done, `refusal` says that it was not done and why,
 * `held` says that it stands.
 */
export type NoticeKind = "info" | "attention" | "refusal" | "held";

/** What a {@link Notice} takes. */
export interface NoticeProps {
  kind?: NoticeKind;
  /** The word that stands for the kind. Defaults: Note, Attention, Not done, Done. */
  word?: string;
  /** The matter in a few words. */
  title?: string;
  children?: ReactNode;
  /** Ways on from here. */
  actions?: ReactNode;
  /** True for a notice that belongs to the page from the start: it is then not announced. */
  isStatic?: boolean;
  className?: string;
}

const WORDS: Record<NoticeKind, string> = {
  info: "Note",
  attention: "Attention",
  refusal: "Not done",
  held: "Done",
};

const SHAPES: Record<NoticeKind, string> = {
  info: "M10 2.5a7.5 7.5 0 1 1 0 15a7.5 7.5 0 0 1 0-15M10 9v5M10 6v1.2",
  attention: "M10 2.8L18 16.8H2zM10 8v4.4M10 13.8v1.2",
  refusal: "M6.7 2.5h6.6l4.2 4.2v6.6l-4.2 4.2H6.7l-4.2-4.2V6.7zM6 10h8",
  held: "M3 10.5l4.5 4.5L17 5",
};

/** Something to be known, as a word, a shape and text; a refusal interrupts, the others wait their turn. */
export function Notice({ kind = "info", word, title, children, actions, isStatic, className }: NoticeProps) {
  const role = isStatic ? "note" : kind === "refusal" ? "alert" : "status";
  return (
    <div className={joinClasses(styles.notice, styles[kind], className)} role={role}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <path d={SHAPES[kind]} />
      </svg>
      <div className={styles.body}>
        <div className={styles.text}>
          <span className={styles.word}>{word ?? WORDS[kind]}</span>
          {title ? <span className={styles.title}>{title}</span> : null}
        </div>
        {children ? <div className={styles.text}>{children}</div> : null}
        {actions ? <div className={styles.actions}>{actions}</div> : null}
      </div>
    </div>
  );
}
