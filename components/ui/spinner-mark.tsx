import styles from "./spinner.module.css";

/** Three slabs that step; decoration beside words, never alone. */
export function SpinnerMark() {
  return (
    <svg className={styles.mark} viewBox="0 0 18 8" aria-hidden="true">
      <rect x="0" y="2" width="4" height="4" />
      <rect x="7" y="2" width="4" height="4" />
      <rect x="14" y="2" width="4" height="4" />
    </svg>
  );
}
