import { buildAcademy, type DemoAcademy } from "@/seed/academy";
import { ACADEMY_ZONE } from "@/seed/people";
import type { AcademyRows } from "@/server/data/academy-rows";
import type { AuditedAct } from "@/server/data/audit";
import { type CalendarDay, instantOf } from "@/server/domain/time/calendar-day";

export const SEED = 1846;

/** A demo academy with the instant it was built for. */
export interface BuiltDay {
  name: string;
  today: CalendarDay;
  nowMs: number;
  rows: AcademyRows;
  acts: AuditedAct[];
  demoClips: DemoAcademy["demoClips"];
}

function builtOn(name: string, today: CalendarDay, minute: number): BuiltDay {
  const nowMs = instantOf(today, minute, ACADEMY_ZONE);
  return { name, today, nowMs, ...buildAcademy({ seed: SEED, today, nowMs }) };
}

/** A plain afternoon, both clock changes of 2026 (a Sunday each), a leap day, New Year's Day, a summer Saturday. */
export const BUILT_DAYS: readonly BuiltDay[] = [
  builtOn("a Wednesday in November", "2026-11-25", 850),
  builtOn("the night the clocks go forward", "2026-03-08", 10),
  builtOn("the day the clocks go back, late", "2026-11-01", 1435),
  builtOn("29 February", "2028-02-29", 600),
  builtOn("New Year's Day", "2027-01-01", 1100),
  builtOn("a Saturday in July", "2027-07-10", 725),
];

/** Rows by one of their fields. */
export function groupedBy<Row, Key>(rows: readonly Row[], keyOf: (row: Row) => Key): (key: Key) => Row[] {
  const groups = new Map<Key, Row[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group) group.push(row);
    else groups.set(keyOf(row), [row]);
  }
  return (key) => groups.get(key) ?? [];
}
