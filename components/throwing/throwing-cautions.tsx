import styles from "./throwing-page.module.css";

const CAUTIONS = [
  "Limits are those of the rule book named above, as dated there. The league's own rules, the athlete's physician and the athletic trainer come first.",
  "A number of pitches is never a permission: it is at most that many by the book, and it knows only what was reported. Before mound work the coach asks what was thrown since and whether anything hurts, and writes the answer down.",
  "Pain stops all throwing at once. The guardian clears it, an athlete of age for themselves; a coach or an admin cannot, and nothing overrides it.",
  "Load and its ratios describe what was logged and never say what will happen.",
  "Nothing here is medical advice.",
];

/** What every number on the page is and is not. */
export function ThrowingCautions() {
  return (
    <ul className={styles.advice}>
      {CAUTIONS.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}
