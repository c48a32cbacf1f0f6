import type { ReactNode } from "react";
import { joinClasses } from "./join-classes";
import styles from "./state-mark.module.css";
import { VisuallyHidden } from "./visually-hidden";

/** The six states that have a shape, in the order a legend gives them. */
export const MARK_KINDS = ["allowed", "thrown", "resting", "outing", "pain", "unreported"] as const;

/** One of {@link MARK_KINDS}. */
export type MarkKind = (typeof MARK_KINDS)[number];

/** What each shape is called when nothing more exact is said. */
export const MARK_WORDS: Record<MarkKind, string> = {
  allowed: "at most, by the book",
  thrown: "thrown",
  resting: "resting until",
  outing: "outing planned",
  pain: "pain: no throwing",
  unreported: "not reported",
};

/** What a {@link StateMark} takes. */
export interface StateMarkProps {
  kind: MarkKind;
  /** The number in the circle or on the block; the other shapes bear none. */
  count?: number;
  /** The free day in a few letters, drawn beside the hatching, e.g. "Sat". */
  freeOn?: string;
  /** The whole state in words, e.g. "at most 40 by the book". */
  label: string;
  /** Default true. When false the words are only read out: then a legend must stand near. */
  isLabelShown?: boolean;
}

/** A state as a shape and in words. The shape alone never carries it, and colour carries nothing. */
export function StateMark({ kind, count, freeOn, label, isLabelShown = true }: StateMarkProps) {
  return (
    <span className={styles.mark}>
      <MarkShape kind={kind} count={count} />
      {kind === "resting" && freeOn && !isLabelShown ? (
        <span className={styles.beside} aria-hidden="true">
          {freeOn}
        </span>
      ) : null}
      {isLabelShown ? <span>{label}</span> : <VisuallyHidden>{label}</VisuallyHidden>}
    </span>
  );
}

/** The bare shape, 30 by 24, for drawings that say the words themselves. */
export function MarkShape({ kind, count }: { kind: MarkKind; count?: number | undefined }) {
  return (
    <svg className={styles.shape} viewBox="0 0 30 24" aria-hidden="true">
      {SHAPES[kind](count)}
    </svg>
  );
}

/** The six shapes and what they mean, to stand beside a heading. */
export function Legend({ kinds = MARK_KINDS }: { kinds?: readonly MarkKind[] }) {
  return (
    <ul className={styles.legend} aria-label="What the shapes mean">
      {kinds.map((kind) => (
        <li key={kind} className={styles.mark}>
          <MarkShape kind={kind} />
          <span>{MARK_WORDS[kind]}</span>
        </li>
      ))}
    </ul>
  );
}

const SHAPES: Record<MarkKind, (count?: number) => ReactNode> = {
  allowed: (count) => (
    <>
      <circle cx="15" cy="12" r="11" />
      <Count value={count} className={styles.count} />
    </>
  ),
  thrown: (count) => (
    <>
      <rect x="2" y="3" width="26" height="18" className={styles.solid} />
      <Count value={count} className={styles.countInside} />
    </>
  ),
  resting: () => (
    <path
      className={styles.hatch}
      d="M2 9L8 3M2 15L14 3M2 21L20 3M8 21L26 3M14 21L28 7M20 21L28 13M26 21L28 19"
    />
  ),
  outing: () => <path d="M15 2.5L24.5 12L15 21.5L5.5 12z" />,
  pain: () => <path d="M6 3h18v18H6zM6 3l18 18M24 3L6 21" />,
  unreported: () => <rect x="6" y="3" width="18" height="18" className={styles.faint} />,
};

function Count({ value, className }: { value: number | undefined; className: string | undefined }) {
  if (value === undefined) return null;
  return (
    <text x="15" y={value > 99 ? 15.5 : 16.2} className={joinClasses(className, value > 99 && styles.long)}>
      {value}
    </text>
  );
}
