import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { importKeyOf } from "./import-key";
import type { ReadRow } from "./import-row";
import type { ThrowKind } from "./throw-entry";

/** A row of a file that was read. */
export interface FileThrows {
  line: number;
  row: ReadRow;
}

/** A row that goes onto the log. */
export interface FreshRow extends FileThrows {
  importKey: string;
}

/** What is on an athlete's log already. */
export interface KnownLog {
  /** Keys of rows that were imported before. */
  importKeys: ReadonlySet<string>;
  /** What else stands on the log: typed in, told at a session, corrected. */
  entries: readonly { thrownOn: CalendarDay; kind: ThrowKind; pitches: number }[];
}

/**
 * Parts the rows of a file into those that are new and those that the log holds: imported before, or just like an entry
 * that was made by hand (same day, kind and pitches; two games alike in the file need two on the log). So the same file
 * adds nothing twice, and a game that the family logged is not counted again.
 */
export function planImport(
  athleteId: string,
  rows: readonly FileThrows[],
  known: KnownLog,
): { fresh: FreshRow[]; there: FileThrows[] } {
  const nth = new Map<string, number>();
  const alike = countAlike(known.entries);
  const fresh: FreshRow[] = [];
  const there: FileThrows[] = [];
  for (const each of rows) {
    const plain = importKeyOf(athleteId, each.row, 0);
    nth.set(plain, (nth.get(plain) ?? 0) + 1);
    const importKey = importKeyOf(athleteId, each.row, nth.get(plain) ?? 1);
    if (known.importKeys.has(importKey) || take(alike, each.row)) there.push(each);
    else fresh.push({ ...each, importKey });
  }
  return { fresh, there };
}

const likeness = (row: { thrownOn: CalendarDay; kind: ThrowKind; pitches: number }) =>
  `${row.thrownOn} ${row.kind} ${row.pitches}`;

function countAlike(entries: KnownLog["entries"]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const entry of entries) counts.set(likeness(entry), (counts.get(likeness(entry)) ?? 0) + 1);
  return counts;
}

function take(counts: Map<string, number>, row: ReadRow): boolean {
  const left = counts.get(likeness(row)) ?? 0;
  if (left > 0) counts.set(likeness(row), left - 1);
  return left > 0;
}
