import Link from "next/link";
import { CorrectionMark } from "@/components/home/correction-mark";
import { EmptyState } from "@/components/ui/empty-state";
import { PHASE_WORDS } from "@/server/domain/mechanics/delivery";
import { dayInWords } from "@/server/domain/time/words";
import styles from "./season.module.css";
import type { SeasonCorrection, SeasonLinks } from "./season-answer";

/** What the athlete works on now: each with its cue, how it stands and since when. */
export function OpenCorrections({
  corrections,
  links,
}: {
  corrections: readonly SeasonCorrection[];
  links: SeasonLinks;
}) {
  if (corrections.length === 0) {
    return <EmptyState title="Nothing is open">The next review may give something to work on.</EmptyState>;
  }
  return (
    <ol className={styles.list}>
      {corrections.map((correction) => (
        <li key={correction.id}>
          <span>
            <Link href={links.evidence(correction)}>{correction.checkpointName}</Link>
            <span className={styles.quiet}>
              {PHASE_WORDS[correction.phase]}, given {dayInWords(correction.givenOn)}
              {correction.cue ? `: “${correction.cue}”` : ""}
            </span>
          </span>
          <CorrectionMark state={correction.state} cameBack={correction.cameBack} />
        </li>
      ))}
    </ol>
  );
}
