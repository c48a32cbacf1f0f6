import type { Db } from "@/db/client";
import type { SessionKind } from "@/server/domain/calendar/session-kind";
import { hasLeft } from "@/server/domain/people/leaving";
import type { BoardQuestion } from "@/server/domain/throwing/board-row";
import { openOutings } from "@/server/domain/throwing/open-outings";
import type { PainClearance, PainReport } from "@/server/domain/throwing/pain";
import { painSpans } from "@/server/domain/throwing/pain-span";
import { SHIPPED_BOOKS } from "@/server/domain/throwing/shipped-books";
import { CAUTIOUS_READING, type PlannedThrows, type ThrowEntry } from "@/server/domain/throwing/throw-entry";
import { addDays, type CalendarDay, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import { dayFinder } from "@/server/domain/time/day-finder";
import { thrownAs } from "./arms";

/** Which arms a board holds; null stands for all. */
export interface BoardFilter {
  coachPersonId: string | null;
  siteId: string | null;
  /** The name of a team that the athlete is on now. */
  team: string | null;
}

/** One arm of a board, ready to be asked about its days. */
export interface ArmOfBoard {
  athleteId: string;
  givenName: string;
  familyName: string;
  question: BoardQuestion;
}

/** How far before the first day of a board the log is read, in days: longer than any rest and any row of days. */
const LOOK_BACK_DAYS = 26;

/** How far ahead the days of booked sessions are looked up at once; later ones are asked for one by one. */
const DAYS_AHEAD = 60;

/* Bare statements: for thousands of arms the rows must come as fast as the database gives them. */
const CHOSEN = `
  FROM athlete a
  WHERE (a.left_on IS NULL OR a.left_on > @leftAfter)
    AND (@coachPersonId IS NULL OR a.coach_person_id = @coachPersonId)
    AND (@siteId IS NULL OR a.home_site_id = @siteId)
    AND (@team IS NULL OR EXISTS (
      SELECT 1 FROM athlete_team t WHERE t.athlete_id = a.id AND t.name = @team AND t.ended_at_ms IS NULL))`;

const ARMS = `
  SELECT chosen.id AS athleteId, p.given_name AS givenName, p.family_name AS familyName, a.born_on AS bornOn,
    a.joined_on AS joinedOn, a.left_on AS leftOn, a.rule_book_id AS bookId, s.zone
  FROM (SELECT a.id ${CHOSEN}) chosen
  JOIN athlete a ON a.id = chosen.id JOIN person p ON p.id = a.person_id JOIN site s ON s.id = a.home_site_id
  ORDER BY p.family_name, p.given_name, a.id`;

/* The arms come first, so that each one's days are a stretch of the index; rows that were corrected are left out. */
const ENTRIES = `
  SELECT e.id, e.athlete_id AS athleteId, e.thrown_on AS thrownOn, e.kind, e.pitches, NULL AS replacesId,
    e.reported_at_ms AS reportedAtMs
  FROM (SELECT a.id ${CHOSEN}) chosen CROSS JOIN throw_entry e ON e.athlete_id = chosen.id
  WHERE e.thrown_on >= @sinceDay
    AND NOT EXISTS (SELECT 1 FROM throw_entry later WHERE later.replaces_id = e.id)`;

const OUTINGS = `
  SELECT o.id, o.athlete_id AS athleteId, o.planned_on AS plannedOn, 'game' AS kind, o.pitches
  FROM (SELECT a.id ${CHOSEN}) chosen CROSS JOIN planned_outing o ON o.athlete_id = chosen.id
  WHERE o.planned_on >= @sinceDay AND o.cancelled_at_ms IS NULL`;

const BOOKED = `
  SELECT x.session_id AS id, x.athlete_id AS athleteId, s.starts_at_ms AS startsAtMs, s.kind,
    x.planned_pitches AS pitches
  FROM session s CROSS JOIN session_athlete x ON x.session_id = s.id
  WHERE s.starts_at_ms >= @sinceMs AND s.state IN ('booked', 'checked_in')`;

const PAIN_REPORTS = `
  SELECT r.id, r.athlete_id AS athleteId, r.kind, r.felt_on AS feltOn, r.reported_at_ms AS reportedAtMs
  FROM (SELECT a.id ${CHOSEN}) chosen CROSS JOIN pain_report r ON r.athlete_id = chosen.id`;

const PAIN_CLEARANCES = `
  SELECT c.athlete_id AS athleteId, c.cleared_at_ms AS clearedAtMs
  FROM (SELECT a.id ${CHOSEN}) chosen CROSS JOIN pain_clearance c ON c.athlete_id = chosen.id`;

type ArmRow = {
  athleteId: string;
  givenName: string;
  familyName: string;
  bornOn: CalendarDay;
  joinedOn: CalendarDay;
  leftOn: CalendarDay | null;
  bookId: string;
  zone: string;
};
type OutingRow = PlannedThrows & { athleteId: string };
type BookedRow = { id: string; athleteId: string; startsAtMs: number; kind: SessionKind; pitches: number };
type ReportRow = PainReport & { athleteId: string };
type ClearanceRow = PainClearance & { athleteId: string };

/**
 * The arms of a board whose first day is `fromDay`, by family name, those who have left by now left out. Every row is
 * read once for all arms together.
 */
export async function armsForBoard(
  db: Db,
  filter: BoardFilter,
  { nowMs, fromDay }: { nowMs: number; fromDay: CalendarDay },
): Promise<ArmOfBoard[]> {
  const sinceDay = addDays(fromDay, -LOOK_BACK_DAYS);
  const leftAfter = addDays(dayOf(nowMs, "UTC"), -1);
  const asked = { ...filter, sinceDay, sinceMs: instantOf(sinceDay, 0, "UTC"), leftAfter };
  const rowsOf = <Row>(statement: string) => db.$client.prepare(statement).all(asked) as Row[];
  const known: Known = {
    entries: byAthlete(rowsOf<ThrowEntry>(ENTRIES)),
    outings: byAthlete(rowsOf<OutingRow>(OUTINGS)),
    booked: byAthlete(rowsOf<BookedRow>(BOOKED)),
    reports: byAthlete(rowsOf<ReportRow>(PAIN_REPORTS)),
    clearances: byAthlete(rowsOf<ClearanceRow>(PAIN_CLEARANCES)),
  };
  const clockOf = clocks(nowMs, sinceDay);
  return rowsOf<ArmRow>(ARMS)
    .filter((row) => !hasLeft(row.leftOn, clockOf(row.zone).today))
    .map((row) => {
      const { athleteId, givenName, familyName } = row;
      return { athleteId, givenName, familyName, question: questionOf(row, known, clockOf(row.zone)) };
    });
}

/** What was read, by athlete. */
interface Known {
  entries: ReadonlyMap<string, ThrowEntry[]>;
  outings: ReadonlyMap<string, OutingRow[]>;
  booked: ReadonlyMap<string, BookedRow[]>;
  reports: ReadonlyMap<string, ReportRow[]>;
  clearances: ReadonlyMap<string, ClearanceRow[]>;
}

function questionOf(row: ArmRow, known: Known, { today, dayAt }: Clock): BoardQuestion {
  const entries = known.entries.get(row.athleteId) ?? [];
  const outings = known.outings.get(row.athleteId) ?? [];
  const reports = known.reports.get(row.athleteId) ?? [];
  const clearances = known.clearances.get(row.athleteId) ?? [];
  return {
    bornOn: row.bornOn,
    today,
    book: bookById(row.bookId),
    reading: CAUTIOUS_READING,
    lastReportedOn: row.joinedOn,
    entries,
    outings: outings.length === 0 ? outings : openOutings(outings, entries),
    booked: (known.booked.get(row.athleteId) ?? []).map(({ id, startsAtMs, kind, pitches }) => ({
      id,
      plannedOn: dayAt(startsAtMs),
      kind: thrownAs(kind),
      pitches,
    })),
    pain: reports.length === 0 ? [] : painSpans({ reports, clearances }, dayAt),
  };
}

interface Clock {
  today: CalendarDay;
  dayAt: (instantMs: number) => CalendarDay;
}

/** The calendar of each zone, made once. */
function clocks(nowMs: number, sinceDay: CalendarDay): (zone: string) => Clock {
  const made = new Map<string, Clock>();
  return (zone) => {
    const before = made.get(zone);
    if (before) return before;
    const today = dayOf(nowMs, zone);
    const clock = { today, dayAt: dayFinder(zone, sinceDay, addDays(today, DAYS_AHEAD)) };
    made.set(zone, clock);
    return clock;
  };
}

function byAthlete<Row extends { athleteId: string }>(rows: readonly Row[]): Map<string, Row[]> {
  const grouped = new Map<string, Row[]>();
  for (const row of rows) {
    const own = grouped.get(row.athleteId);
    if (own) own.push(row);
    else grouped.set(row.athleteId, [row]);
  }
  return grouped;
}

function bookById(id: string) {
  const book = SHIPPED_BOOKS.find((each) => each.id === id);
  if (!book) throw new Error(`There is no rule book ${id}.`);
  return book;
}
