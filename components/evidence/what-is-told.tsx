import type { CheckpointEvidence } from "@/server/api/evidence/checkpoint-shape";
import { capitalised } from "@/server/domain/text/capitalised";
import styles from "./evidence.module.css";
import type { SeriesView } from "./plot-days";

/** What {@link WhatIsTold} takes. */
export interface WhatIsToldProps {
  series: SeriesView;
  corrections: CheckpointEvidence["corrections"];
  manyWords: readonly string[];
}

/** What the days carry: since each correction, over all days, and how sure that is. */
export function WhatIsTold({ series, corrections, manyWords }: WhatIsToldProps) {
  const { since, trendWords, shiftWords, errorWords, wantedWords } = series;
  return (
    <>
      {since.length === 0 ? (
        <p>No correction was given here: there is no before and after to compare.</p>
      ) : (
        <ol className={styles.told}>
          {since.map(({ correctionId, words: [fixed, ...rest], fellAway }) => (
            <li key={correctionId}>
              <span className={styles.since}>Since “{cueOf(corrections, correctionId)}”</span>
              <strong>{fixed}</strong> {rest.join(" ")}
              {fellAway ? ` ${FELL_AWAY}` : ""}
            </li>
          ))}
        </ol>
      )}
      <dl className={styles.sure}>
        <dt>Month by month</dt>
        <dd>{sentence(trendWords)}</dd>
        <dt>Shifts</dt>
        <dd>{sentence(shiftWords)}</dd>
        <dt>Error</dt>
        <dd>{errorWords}</dd>
        <dt>Better</dt>
        <dd>{wantedWords}</dd>
        <dt>Looked at together</dt>
        <dd>{manyWords.join(" ")}</dd>
      </dl>
    </>
  );
}

const FELL_AWAY =
  "By itself it would be more than error; among all the checkpoints looked at together, chance brings some like it.";

const cueOf = (corrections: CheckpointEvidence["corrections"], id: string) =>
  corrections.find((each) => each.id === id)?.cue ?? "";

/** Words as a sentence of their own. @example sentence("no trend") // "No trend." */
function sentence(words: string): string {
  return words.endsWith(".") ? capitalised(words) : `${capitalised(words)}.`;
}
