import type { Db } from "@/db/client";
import { hasLeft } from "@/server/domain/people/leaving";
import { standingOverrides } from "@/server/domain/rule-books/limit-override";
import type { BoardQuestion } from "@/server/domain/throwing/board-row";
import { openOutings } from "@/server/domain/throwing/open-outings";
import { painSpans } from "@/server/domain/throwing/pain-span";
import type { ThrowReading } from "@/server/domain/throwing/throw-entry";
import { addDays, type CalendarDay, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import { dayFinder } from "@/server/domain/time/day-finder";
import { academyReading } from "./academy-reading";
import { thrownAs } from "./arms";
import { type BoardFilter, type BoardRows, readBoardRows } from "./arms-board-rows";
import { booksById } from "./rule-books";

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

/**
 * The arms of a board whose first day is `fromDay`, by family name, those who have left by now left out.
 * @throws Error when a book is nowhere (the caller's fault: books are never deleted)
 */
export async function armsForBoard(
  db: Db,
  filter: BoardFilter,
  { nowMs, fromDay }: { nowMs: number; fromDay: CalendarDay },
): Promise<ArmOfBoard[]> {
  const sinceDay = addDays(fromDay, -LOOK_BACK_DAYS);
  const leftAfter = addDays(dayOf(nowMs, "UTC"), -1);
  const rows = readBoardRows(db, filter, { sinceDay, sinceMs: instantOf(sinceDay, 0, "UTC"), leftAfter });
  const clockOf = clocks(nowMs, sinceDay);
  const booksOf = await bookShelf(db, rows);
  const { countedKinds, askAfterDays } = await academyReading(db);
  const known = byAthlete(rows, { countedKinds, askAfterDays });
  return rows.arms
    .filter((row) => !hasLeft(row.leftOn, clockOf(row.zone).today))
    .map((row) => {
      const { athleteId, givenName, familyName } = row;
      const question = questionOf(row, known, booksOf(row), clockOf(row.zone));
      return { athleteId, givenName, familyName, question };
    });
}

type ArmRow = BoardRows["arms"][number];
type Grouped = {
  [Name in Exclude<keyof BoardRows, "arms" | "teamBooks">]: ReadonlyMap<string, BoardRows[Name]>;
};
type Known = Grouped & { reading: ThrowReading };

function byAthlete(rows: BoardRows, reading: ThrowReading): Known {
  return {
    reading,
    entries: grouping(rows.entries),
    outings: grouping(rows.outings),
    booked: grouping(rows.booked),
    reports: grouping(rows.reports),
    clearances: grouping(rows.clearances),
    overrides: grouping(rows.overrides),
  };
}

function grouping<Row extends { athleteId: string }>(rows: readonly Row[]): Map<string, Row[]> {
  const grouped = new Map<string, Row[]>();
  for (const row of rows) {
    const own = grouped.get(row.athleteId);
    if (own) own.push(row);
    else grouped.set(row.athleteId, [row]);
  }
  return grouped;
}

function questionOf(
  { athleteId, bornOn, joinedOn }: ArmRow,
  known: Known,
  books: BoardQuestion["books"],
  { today, dayAt }: Clock,
): BoardQuestion {
  const entries = known.entries.get(athleteId) ?? [];
  const outings = known.outings.get(athleteId) ?? [];
  const reports = known.reports.get(athleteId) ?? [];
  const clearances = known.clearances.get(athleteId) ?? [];
  const overrides = known.overrides.get(athleteId) ?? [];
  const booked = known.booked.get(athleteId) ?? [];
  return {
    ...{ bornOn, today, books, entries, reading: known.reading, lastReportedOn: joinedOn },
    overrides: overrides.length === 0 ? [] : standingOverrides(overrides),
    outings: outings.length === 0 ? [] : openOutings(outings, entries),
    booked: booked.map(({ id, startsAtMs, kind, pitches }) => ({
      ...{ id, pitches, plannedOn: dayAt(startsAtMs), kind: thrownAs(kind), teamId: null },
    })),
    pain: reports.length === 0 ? [] : painSpans({ reports, clearances }, dayAt),
  };
}

/** The books of each arm, the athlete's own first; arms with the same books share one list of them. */
async function bookShelf(db: Db, rows: BoardRows): Promise<(row: ArmRow) => BoardQuestion["books"]> {
  const ofTeams = grouping(rows.teamBooks);
  const books = await booksById(db, new Set([...rows.arms, ...rows.teamBooks].map((row) => row.bookId)));
  const shelf = new Map<string, BoardQuestion["books"]>();
  return ({ athleteId, bookId }) => {
    const ids = new Set([bookId, ...(ofTeams.get(athleteId) ?? []).map((team) => team.bookId)]);
    const key = [...ids].join(" ");
    const found = shelf.get(key) ?? booksWith(ids, books);
    shelf.set(key, found);
    return found;
  };
}

function booksWith(
  ids: ReadonlySet<string>,
  books: Awaited<ReturnType<typeof booksById>>,
): BoardQuestion["books"] {
  const [first, ...others] = [...ids].map((id) => {
    const book = books.get(id);
    if (!book) throw new Error(`There is no rule book ${id}.`);
    return book;
  });
  if (!first) throw new Error("An arm goes by one book at least.");
  return [first, ...others];
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
