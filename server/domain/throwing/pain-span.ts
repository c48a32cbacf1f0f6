import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { PainClearance, PainKind, PainReport, PainStop } from "./pain";

/** The days an arm was or is stopped by one report: from the day it was felt up to the day it was cleared. */
export interface PainSpan {
  id: string;
  kind: PainKind;
  feltOn: CalendarDay;
  /** The day of the first clearance after the report, on which the arm is free again; null while it stands. */
  clearedOn: CalendarDay | null;
}

/** The stop of one day: what {@link pitchesAllowed} is asked with, and since when it no longer stands. */
export interface PainOfDay {
  stop: PainStop;
  /** The day the last of its reports was cleared; null while one stands. */
  clearedOn: CalendarDay | null;
}

/**
 * The days of every report of one arm. A report is cleared by the first clearance made after it; one made at the same
 * instant leaves it standing.
 * @param dayAt the day of an instant at the athlete's home site
 */
export function painSpans(
  record: { reports: readonly PainReport[]; clearances: readonly PainClearance[] },
  dayAt: (instantMs: number) => CalendarDay,
): PainSpan[] {
  return record.reports.map(({ id, kind, feltOn, reportedAtMs }) => {
    const later = record.clearances.map((each) => each.clearedAtMs).filter((atMs) => atMs > reportedAtMs);
    return { id, kind, feltOn, clearedOn: later.length === 0 ? null : dayAt(Math.min(...later)) };
  });
}

/**
 * What stops an arm on a day, as it is known now; null when nothing does. Reports that overlap count as one stop, and
 * pain outweighs fatigue. A report cleared on the day it was felt stops no day.
 * @example felt on Sat 14 Nov and cleared on Tue 17 Nov: the 14th to the 16th are stopped
 */
export function painOnDay(spans: readonly PainSpan[], day: CalendarDay): PainOfDay | null {
  const standing = spans
    .filter((span) => span.feltOn <= day && (span.clearedOn === null || day < span.clearedOn))
    .toSorted((a, b) => a.feltOn.localeCompare(b.feltOn));
  const [first] = standing;
  const last = standing.at(-1);
  if (!first || !last) return null;
  const isCleared = standing.every((span) => span.clearedOn !== null);
  return {
    stop: {
      kind: standing.some((span) => span.kind === "pain") ? "pain" : "unusual_fatigue",
      firstFeltOn: first.feltOn,
      lastFeltOn: last.feltOn,
      reportIds: standing.map((span) => span.id),
    },
    clearedOn: isCleared ? lastDay(standing.map((span) => span.clearedOn ?? "")) : null,
  };
}

function lastDay(days: readonly CalendarDay[]): CalendarDay {
  return days.toSorted().at(-1) ?? "";
}
