import styles from "./skip-link.module.css";

/** The first stop of the Tab key: past the navigation to the page itself. */
export function SkipLink({ targetId = "main" }: { targetId?: string }) {
  return (
    <a className={styles.skip} href={`#${targetId}`}>
      Skip to the page
    </a>
  );
}
