import Link from "next/link";
import styles from "./header.module.css";

/** The name and its mark: a slab seen from above, four to one as it lies on the mound, with a foot set at its side. */
export function Wordmark({ href }: { href: string }) {
  return (
    <Link href={href} className={styles.wordmark} aria-label="Slabside, first page">
      <svg viewBox="0 0 32 16" width="32" height="16" aria-hidden="true">
        <rect x="0.75" y="4.75" width="30.5" height="7" fill="none" stroke="currentColor" strokeWidth="1.5" />
        <rect x="22" y="2" width="5" height="12" rx="2.5" fill="currentColor" />
      </svg>
      <span>
        <b>Slab</b>side
      </span>
    </Link>
  );
}
