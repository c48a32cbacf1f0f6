import { EmptyState } from "@/components/ui/empty-state";
import { PAIN_KIND_WORDS } from "@/server/domain/throwing/throw-words";
import { dayInWords } from "@/server/domain/time/words";
import type { PainAnswer } from "./arm-answer";
import styles from "./throwing-page.module.css";

/** All that was said of pain, latest first: reports, and the clearances that ended them. */
export function PainRecord({ pain }: { pain: PainAnswer }) {
  const lines = [
    ...pain.reports.map((report) => ({
      id: report.id,
      atMs: report.reportedAtMs,
      head: `${PAIN_KIND_WORDS[report.kind]}, felt ${dayInWords(report.feltOn, { withYear: true })}`,
      detail: report.note,
      byName: report.byName,
    })),
    ...pain.clearances.map((clearance) => ({
      id: clearance.id,
      atMs: clearance.clearedAtMs,
      head: `Cleared: no symptoms since ${dayInWords(clearance.symptomFreeSince, { withYear: true })}`,
      detail: clearance.examinedBy ? `Examined by ${clearance.examinedBy}` : "",
      byName: clearance.byName,
    })),
  ].sort((a, b) => b.atMs - a.atMs);
  if (lines.length === 0) {
    return (
      <EmptyState title="No pain was ever reported">
        Anybody may report it: coach, family, athlete.
      </EmptyState>
    );
  }
  return (
    <ul className={styles.rows}>
      {lines.map((line) => (
        <li key={line.id}>
          <span>
            {line.head}
            {line.detail ? <span className={styles.quiet}>{line.detail}</span> : null}
          </span>
          <span className={styles.by}>{line.byName}</span>
        </li>
      ))}
    </ul>
  );
}
