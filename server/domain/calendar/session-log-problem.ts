import type { RefusalDetail } from "@/server/domain/errors/refusal";
import { type CountedPitches, countProblems } from "./counted-pitches";
import { type SessionKind, throwsOnMound } from "./session-kind";
import type { Attendance, WorkOutcome } from "./session-state";

/** What the coach writes down of one athlete after a session. */
export interface LogLine extends CountedPitches {
  athleteId: string;
  attendance: Attendance;
  minutes: number;
  pitches: number;
  /** 0 to 10; null when it was not asked. */
  effort: number | null;
  work: readonly { correctionId: string; outcome: WorkOutcome }[];
}

/** What a log is held against. */
export interface LoggedSession {
  kind: SessionKind;
  athleteIds: readonly string[];
  /** Who was asked before mound work. */
  checkedInIds: ReadonlySet<string>;
}

/**
 * What keeps a log from being written, or null: each athlete of the session stands on it once; whoever came to mound
 * work was asked before; nobody who stayed away has minutes, pitches, an effort, counts or work; what is counted can be;
 * a session without mound throws has no pitches.
 */
export function sessionLogProblem(
  session: LoggedSession,
  lines: readonly LogLine[],
): Extract<RefusalDetail, { reason: "check_in_missing" | "throw_entry_invalid" }> | null {
  const invalid = (why: string) => ({ reason: "throw_entry_invalid" as const, why });
  const onLog = new Set(lines.map((line) => line.athleteId));
  const isWhole =
    onLog.size === lines.length &&
    lines.length === session.athleteIds.length &&
    session.athleteIds.every((id) => onLog.has(id));
  if (!isWhole) return invalid("Each athlete of the session stands on its log once.");
  if (lines.some(hasWorkWithoutComing)) {
    return invalid("Somebody who did not come has no minutes, pitches, effort, counts or work to log.");
  }
  const [miscounted] = lines.flatMap((line) => countProblems(line.pitches, line));
  if (miscounted) return invalid(miscounted.why);
  if (!throwsOnMound(session.kind)) {
    return lines.some((line) => line.pitches > 0)
      ? invalid("A session without mound throws has no pitches to log.")
      : null;
  }
  const isUnasked = (line: LogLine) =>
    line.attendance === "came" && !session.checkedInIds.has(line.athleteId);
  return lines.some(isUnasked) ? { reason: "check_in_missing" } : null;
}

function hasWorkWithoutComing({ attendance, minutes, pitches, effort, work, ...counts }: LogLine): boolean {
  const isCounted = counts.strikes !== null || counts.topSpeed !== null;
  return (
    attendance === "no_show" &&
    (minutes > 0 || pitches > 0 || effort !== null || isCounted || work.length > 0)
  );
}
