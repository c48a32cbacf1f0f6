import Link from "next/link";
import styles from "./pagination.module.css";

/** What a {@link Pagination} takes. */
export interface PaginationProps {
  /** From 1. */
  page: number;
  pageSize: number;
  /** How many there are in all. */
  total: number;
  /** What is counted, e.g. "rounds". */
  noun: string;
  hrefFor: (page: number) => string;
}

/**
 * Which of how many are shown, in words.
 * @example rangeInWords(2, 20, 214, "charges") // "21 to 40 of 214 charges"
 */
export function rangeInWords(page: number, pageSize: number, total: number, noun: string): string {
  if (total === 0) return `no ${noun}`;
  const first = (page - 1) * pageSize + 1;
  return `${first} to ${Math.min(page * pageSize, total)} of ${total} ${noun}`;
}

/** The way through a long list, page by page; nothing where one page holds it all. */
export function Pagination({ page, pageSize, total, noun, hrefFor }: PaginationProps) {
  const last = Math.max(1, Math.ceil(total / pageSize));
  if (last === 1) return null;
  return (
    <nav aria-label={`Pages of ${noun}`} className={styles.pages} data-print="no">
      <Step text="Before" href={page > 1 ? hrefFor(page - 1) : null} />
      <span className={styles.where}>{rangeInWords(page, pageSize, total, noun)}</span>
      <Step text="After" href={page < last ? hrefFor(page + 1) : null} />
    </nav>
  );
}

function Step({ text, href }: { text: string; href: string | null }) {
  if (href === null) return <span className={`${styles.step} ${styles.none}`}>{text}</span>;
  return (
    <Link className={styles.step} href={href}>
      {text}
    </Link>
  );
}
