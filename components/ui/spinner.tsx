import styles from "./spinner.module.css";
import { SpinnerMark } from "./spinner-mark";

/** Work of unknown length, in words: "Reading the clip…". Announced politely. */
export function Spinner({ text }: { text: string }) {
  return (
    <span className={styles.line} role="status">
      <SpinnerMark />
      {text}
    </span>
  );
}
