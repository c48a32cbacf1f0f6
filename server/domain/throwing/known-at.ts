import type { PainClearance, PainReport } from "./pain";
import type { PlannedThrows, ThrowEntry } from "./throw-entry";

/** Everything an answer rests on, with when each row was written down. */
export interface Record {
  entries: readonly ThrowEntry[];
  planned: readonly (PlannedThrows & { addedAtMs: number; cancelledAtMs: number | null })[];
  reports: readonly PainReport[];
  clearances: readonly PainClearance[];
}

/**
 * The record as it was known at an instant, that instant included: rows written down later are left out, so that a
 * corrected row says again what it said before its correction; a plan counts until it was cancelled.
 */
export function knownAt<Known extends Record>(record: Known, atMs: number): Known {
  return {
    ...record,
    entries: record.entries.filter((row) => row.reportedAtMs <= atMs),
    planned: record.planned.filter(
      (row) => row.addedAtMs <= atMs && (row.cancelledAtMs === null || row.cancelledAtMs > atMs),
    ),
    reports: record.reports.filter((row) => row.reportedAtMs <= atMs),
    clearances: record.clearances.filter((row) => row.clearedAtMs <= atMs),
  };
}
