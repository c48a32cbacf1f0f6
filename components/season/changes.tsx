import Link from "next/link";
import { EmptyState } from "@/components/ui/empty-state";
import { CAMERA_VIEW_WORDS } from "@/server/domain/mechanics/delivery";
import { MEASURES } from "@/server/domain/mechanics/measure-kind";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./season.module.css";
import type { SeasonAnswer, SeasonLinks } from "./season-answer";

type Changed = SeasonAnswer["changes"]["all"][number];

/** Every checkpoint that was looked at since it was corrected, in the fixed words; too few are folded away. */
export function Changes({ changes, links }: { changes: SeasonAnswer["changes"]; links: SeasonLinks }) {
  const told = changes.all.filter(({ outcome }) => outcome !== "too_few");
  const short = changes.all.filter(({ outcome }) => outcome === "too_few");
  if (changes.all.length === 0) {
    return (
      <EmptyState title="Nothing was looked at since a correction">
        What a coach judges or measures where something was corrected is compared here with the days before.
      </EmptyState>
    );
  }
  return (
    <>
      <p>{changes.words.join(" ")}</p>
      <List changes={told} links={links} />
      {short.length === 0 ? null : (
        <details className={styles.more}>
          <summary>{short.length} with too few observations</summary>
          <List changes={short} links={links} />
        </details>
      )}
    </>
  );
}

function List({ changes, links }: { changes: readonly Changed[]; links: SeasonLinks }) {
  if (changes.length === 0) return null;
  return (
    <ul className={styles.list}>
      {changes.map((change) => (
        <li key={change.id} className={styles.change}>
          <Link href={links.evidence(change)}>{change.checkpointName}</Link>
          <span className={styles.outcome}>
            <svg viewBox="0 0 14 14" aria-hidden="true">
              <path d={SHAPES[change.outcome]} />
            </svg>
            {change.words}
          </span>
          <span className={styles.quiet}>
            {seenInWords(change)}. {change.figures.join(" ")}
          </span>
        </li>
      ))}
    </ul>
  );
}

function seenInWords({ kind, view, givenOn }: Changed): string {
  const what = kind === "judgement" ? "Judged" : MEASURES[kind].words;
  const from = view === null ? "in person" : `from the ${CAMERA_VIEW_WORDS[view].toLowerCase()}`;
  return `${what} ${from}, since ${dayInWords(givenOn, { withYear: true })}`;
}

/** Up, down, aside, level, dots. */
const SHAPES: Record<Changed["outcome"], string> = {
  improved: "M7 12V2M3 6l4-4l4 4",
  worse: "M7 2v10M3 8l4 4l4-4",
  changed: "M2 7h10M8 3l4 4l-4 4",
  no_change: "M2 7h10",
  too_few: "M3 7h.01M7 7h.01M11 7h.01",
};
