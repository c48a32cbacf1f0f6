import type { CheckpointEvidence } from "@/server/api/evidence/checkpoint-shape";
import styles from "./evidence.module.css";
import type { SeriesView } from "./plot-days";
import { spanInWords } from "./series-words";

type Corrections = CheckpointEvidence["corrections"];

/** What stands in the chart beside the days, in words: the corrections by their numbers, and what was published. */
export function ChartKey({ series, corrections }: { series: SeriesView; corrections: Corrections }) {
  return (
    <div className={styles.key}>
      {corrections.length > 0 ? (
        <>
          <p>
            Shaded, from its number to the broken line: a correction, from given until it held or was retired.
          </p>
          <CorrectionLives corrections={corrections} />
        </>
      ) : null}
      {series.published.length > 0 ? (
        <>
          <p>Within broken lines, one standard deviation to either side of the mean that was published:</p>
          <ul>
            {series.published.map(({ words }) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </>
      ) : null}
    </div>
  );
}

/** Each correction from given to how it stands. */
export function CorrectionLives({ corrections }: { corrections: Corrections }) {
  return (
    <ul>
      {corrections.map((each, at) => (
        <li key={each.id}>{spanInWords(each, at + 1)}</li>
      ))}
    </ul>
  );
}
