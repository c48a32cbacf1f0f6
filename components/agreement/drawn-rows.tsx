import type { ReactNode } from "react";
import styles from "./agreement.module.css";

/** One line of figures: of whom, the drawing of it, and the same in words. */
export interface DrawnRow {
  key: string;
  name: string;
  drawing: ReactNode;
  words: string;
}

/** Figures under one another, each drawn and in words; what is drawn is not read out, for the words say it. */
export function DrawnRows({ label, rows }: { label: string; rows: readonly DrawnRow[] }) {
  return (
    <ul className={styles.rows} aria-label={label}>
      {rows.map(({ key, name, drawing, words }) => (
        <li key={key} className={styles.row}>
          <b className={styles.rowName}>{name}</b>
          <span className={styles.drawing}>{drawing}</span>
          <span className={styles.rowWords}>{words}</span>
        </li>
      ))}
    </ul>
  );
}

/* Half the length of the axis, and how far in it begins, in the drawing's own units. */
const HALF = 60;
const MIDDLE = 66;

/** Where a share of the axis, -1 to 1, lies in the drawing; what lies beyond stops at its end. */
export function placeOnAxis(share: number): number {
  return MIDDLE + HALF * Math.max(-1, Math.min(1, share));
}

/** How far a coach lies from the others: a dot left or right of the line that stands for them. */
export function OffsetDrawn({ offset, reach }: { offset: number; reach: number }) {
  const x = placeOnAxis(reach === 0 ? 0 : offset / reach);
  return (
    <svg className={styles.figure} viewBox="0 0 132 20" aria-hidden="true">
      <path className={styles.axis} d={`M${MIDDLE - HALF} 10H${MIDDLE + HALF}`} />
      <path className={styles.middle} d={`M${MIDDLE} 2V18`} />
      <path className={styles.span} d={`M${MIDDLE} 10H${x}`} />
      <circle className={styles.dot} cx={x} cy="10" r="4" />
    </svg>
  );
}

/** A figure of agreement on an axis from -1 to 1, where 0 is chance, with its interval. */
export function FigureDrawn(props: { figure: number | null; lower: number | null; upper: number | null }) {
  const { figure, lower, upper } = props;
  if (figure === null) return null;
  return (
    <svg className={styles.figure} viewBox="0 0 132 20" aria-hidden="true">
      <path className={styles.axis} d={`M${MIDDLE - HALF} 10H${MIDDLE + HALF}`} />
      <path className={styles.middle} d={`M${MIDDLE} 4V16M${MIDDLE + HALF} 4V16`} />
      {lower === null || upper === null ? null : (
        <path className={styles.span} d={`M${placeOnAxis(lower)} 10H${placeOnAxis(upper)}`} />
      )}
      <circle className={styles.dot} cx={placeOnAxis(figure)} cy="10" r="4" />
    </svg>
  );
}
