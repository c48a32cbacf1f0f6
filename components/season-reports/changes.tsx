import { Disclosure } from "@/components/ui/disclosure";
import styles from "./report.module.css";
import type { Report } from "./report-answer";

/** On paper a page holds so many; the rest is on the screen. */
const PRINTED_CHANGES = 5;

/** What changed by more than its error, of how many that were looked at; the words are fixed, the figures beside them. */
export function Changes({ changes }: Pick<Report, "changes">) {
  const { told, same, words } = changes;
  const left = told.length - PRINTED_CHANGES;
  return (
    <>
      <p>{words.join(" ")}</p>
      {told.length > 0 ? (
        <ul className={styles.rows}>
          {told.map(({ id, checkpointName, seen, words: [fixed, ...figures] }, index) => (
            <li key={id} data-print={index < PRINTED_CHANGES ? undefined : "no"}>
              <div className={styles.line}>
                <b>{checkpointName}</b>
                <span>{fixed}</span>
              </div>
              <p className={styles.about}>
                {seen}. {figures.join(" ")}
              </p>
            </li>
          ))}
        </ul>
      ) : null}
      {left > 0 ? <p className={styles.onPaper}>{left} more changed; they are on the screen.</p> : null}
      {same.length > 0 ? (
        <div data-print="no">
          <Disclosure summary="Of which no change can be told from error">
            <ul className={styles.plain}>
              {same.map(({ id, checkpointName, seen, words }) => (
                <li key={id}>
                  {checkpointName}: {seen.charAt(0).toLowerCase()}
                  {seen.slice(1)}. {words.join(" ")}
                </li>
              ))}
            </ul>
          </Disclosure>
        </div>
      ) : null}
    </>
  );
}
