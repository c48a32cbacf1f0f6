import { CorrectionMark } from "@/components/home/correction-mark";
import { Section } from "@/components/ui/section";
import {
  aboutInWords,
  printedWorkedOn,
  REPORT_CAUTIONS,
  seasonInShort,
} from "@/server/domain/season-reports/report-in-words";
import { spanInWords } from "@/server/domain/season-reports/season-span";
import { sessionsInWords } from "@/server/domain/season-reports/sessions-attended";
import { dayInWords } from "@/server/domain/time/words";
import { Changes } from "./changes";
import styles from "./report.module.css";
import type { Report } from "./report-answer";
import { Throwing } from "./throwing";

/** What a {@link SeasonReport} takes. */
export interface SeasonReportProps {
  report: Report;
  /** As much of the name as the reader may see. */
  athleteName: string;
}

/** A season on two pages: what was worked on and what comes next, then the figures. Reads the same on a screen. */
export function SeasonReport({ report, athleteName }: SeasonReportProps) {
  const { workedOn, changes, sessions, throwing } = report;
  return (
    <article className={styles.report}>
      <div className={styles.sheet}>
        <Section title="In short">
          <ul className={styles.plain}>
            {seasonInShort(
              workedOn,
              { lookedAt: changes.lookedAt, beyondError: changes.told.length },
              sessions,
            ).map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </Section>
        <Section title="What was worked on, and what held" count={workedOn.length}>
          <WorkedOnList worked={workedOn} />
        </Section>
        <Section title="What the next season is for">
          <Focus focus={report.focus} />
        </Section>
      </div>
      <div className={styles.sheet}>
        <Section title="What changed beyond measurement error">
          <Changes changes={changes} />
        </Section>
        <Section title="The throwing year">
          <Throwing throwing={throwing} />
        </Section>
        <Section title="Sessions">
          <p>{sessionsInWords(sessions).join(" ")}</p>
        </Section>
        <Section title="What to keep in mind">
          <ul className={styles.cautions}>
            {REPORT_CAUTIONS.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </Section>
      </div>
      <p className={styles.foot} aria-hidden="true">
        {[report.academyName, athleteName, spanInWords(report), asOfWords(report)].join(" · ")}
      </p>
    </article>
  );
}

/** @example "as of Wed 25 Nov 2026" */
export function asOfWords({ asOf }: Pick<Report, "asOf">): string {
  return `as of ${dayInWords(asOf, { withYear: true })}`;
}

function WorkedOnList({ worked }: { worked: Report["workedOn"] }) {
  if (worked.length === 0) return <p>No correction was worked on in this time.</p>;
  const printed = printedWorkedOn(worked);
  const left = worked.length - printed.size;
  return (
    <>
      <ul className={styles.rows}>
        {worked.map((each) => (
          <li key={each.id} data-print={printed.has(each.id) ? undefined : "no"}>
            <div className={styles.line}>
              <b>{each.checkpointName}</b>
              <CorrectionMark state={each.state} cameBack={isBack(each)} />
            </div>
            <p className={styles.about}>{aboutInWords(each)}</p>
          </li>
        ))}
      </ul>
      {left > 0 ? (
        <p className={styles.onPaper}>
          {left} more, in which less happened lately, {left === 1 ? "is" : "are"} on the screen.
        </p>
      ) : null}
    </>
  );
}

/** It came back and has not held since. */
function isBack({ state, cameBackOn, heldOn }: Report["workedOn"][number]): boolean {
  return state !== "held" && cameBackOn !== null && (heldOn ?? "") <= cameBackOn;
}

function Focus({ focus }: Pick<Report, "focus">) {
  if (focus === null) return <p>A coach has not written it yet.</p>;
  return (
    <>
      <p className={styles.focus}>{focus.text}</p>
      <p className={styles.quiet}>
        {focus.byName}, {dayInWords(focus.writtenOn, { withYear: true })}
      </p>
    </>
  );
}
