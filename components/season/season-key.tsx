import styles from "./season.module.css";

const KEY = [
  { shape: <rect x="1" y="4" width="22" height="10" />, words: "given; a round that ended" },
  {
    shape: <path d="M1 4h22v10h-22zM3 14l8-10M10 14l8-10M17 14l6-7" />,
    words: "showing; a round that goes on",
  },
  { shape: <rect x="7" y="4" width="10" height="10" className={styles.solid} />, words: "held; a game" },
  { shape: <path d="M7 4h10v10h-10zM7 4l10 10M17 4l-10 10" />, words: "retired; pain" },
  { shape: <path d="M12 2L19 9L12 16L5 9z" />, words: "came back; outing planned" },
  { shape: <path d="M12 1v16" />, words: "session" },
] as const;

/** What the shapes of the season mean. */
export function SeasonKey() {
  return (
    <ul className={styles.key} aria-label="What the shapes mean">
      {KEY.map(({ shape, words }) => (
        <li key={words}>
          <svg viewBox="0 0 24 18" aria-hidden="true">
            {shape}
          </svg>
          {words}
        </li>
      ))}
    </ul>
  );
}
