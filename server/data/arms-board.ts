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
import { bookShelf } from "./arm-books";
import { armReader, byAthlete } from "./arm-rows";
import { plannedThrows } from "./arms";

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

/** How far before the first day of a board the log is read, in days; farther for books that add up more days. */
const LOOK_BACK_DAYS = 26;

/** How far ahead the days of booked sessions are looked up at once; later ones are asked for one by one. */
const DAYS_AHEAD = 60;

const CHOSEN = `
  SELECT a.id AS athleteId, p.given_name AS givenName, p.family_name AS familyName, a.born_on AS bornOn,
    a.joined_on AS joinedOn, a.left_on AS leftOn, a.rule_book_id AS bookId, s.zone
  FROM athlete a JOIN person p ON p.id = a.person_id JOIN site s ON s.id = a.home_site_id
  WHERE (a.left_on IS NULL OR a.left_on > @leftAfter)
    AND (@coachPersonId IS NULL OR a.coach_person_id = @coachPersonId)
    AND (@siteId IS NULL OR a.home_site_id = @siteId)
    AND (@team IS NULL OR EXISTS (
      SELECT 1 FROM athlete_team t WHERE t.athlete_id = a.id AND t.name = @team AND t.ended_at_ms IS NULL))
  ORDER BY p.family_name, p.given_name, a.id`;

interface ChosenArm extends Omit<ArmOfBoard, "question"> {
  bornOn: CalendarDay;
  joinedOn: CalendarDay;
  leftOn: CalendarDay | null;
  bookId: string;
  zone: string;
}

/**
 * The arms of a board whose first day is `fromDay`, by family name, those who have left by now left out. Everything is
 * read once for all of them together.
 */
export async function armsForBoard(
  db: Db,
  filter: BoardFilter,
  { nowMs, fromDay }: { nowMs: number; fromDay: CalendarDay },
): Promise<ArmOfBoard[]> {
  const sinceDay = addDays(fromDay, -LOOK_BACK_DAYS);
  const clockOf = clocks(nowMs, sinceDay);
  const arms = chosenArms(db, filter, nowMs).filter((arm) => !hasLeft(arm.leftOn, clockOf(arm.zone).today));
  const ids = arms.map((arm) => arm.athleteId);
  const near = { ids, sinceDay, sinceMs: instantOf(sinceDay, 0, "UTC") };
  const teamBooks = armReader(db, { ...near, farIds: [], farSinceDay: sinceDay })("teamBooks");
  const { booksOf, farOf } = await bookShelf(db, arms, teamBooks);
  const { countedKinds, askAfterDays } = await academyReading(db);
  const reading = { countedKinds, askAfterDays };
  const known = knownOf(armReader(db, { ...near, ...farOf(arms, sinceDay, ["limit"]) }));
  return arms.map((arm) => {
    const { athleteId, givenName, familyName } = arm;
    const question = questionOf(arm, { ...known, reading, books: booksOf(arm) }, clockOf(arm.zone));
    return { athleteId, givenName, familyName, question };
  });
}

function chosenArms(db: Db, filter: BoardFilter, nowMs: number): ChosenArm[] {
  const leftAfter = addDays(dayOf(nowMs, "UTC"), -1);
  return db.$client.prepare(CHOSEN).all({ ...filter, leftAfter }) as ChosenArm[];
}

function knownOf(read: ReturnType<typeof armReader>) {
  return {
    entries: byAthlete(read("entries")),
    outings: byAthlete(read("outings")),
    booked: byAthlete(read("booked")),
    reports: byAthlete(read("reports")),
    clearances: byAthlete(read("clearances")),
    overrides: byAthlete(read("overrides")),
  };
}

function questionOf(
  { athleteId, bornOn, joinedOn }: ChosenArm,
  known: ReturnType<typeof knownOf> & { reading: ThrowReading; books: BoardQuestion["books"] },
  { today, dayAt }: Clock,
): BoardQuestion {
  const entries = known.entries.get(athleteId) ?? [];
  const outings = known.outings.get(athleteId) ?? [];
  const reports = known.reports.get(athleteId) ?? [];
  const clearances = known.clearances.get(athleteId) ?? [];
  const overrides = known.overrides.get(athleteId) ?? [];
  const booked = known.booked.get(athleteId) ?? [];
  return {
    bornOn,
    today,
    entries,
    books: known.books,
    reading: known.reading,
    lastReportedOn: joinedOn,
    overrides: overrides.length === 0 ? [] : standingOverrides(overrides),
    outings: outings.length === 0 ? [] : openOutings(outings, entries),
    booked: booked.map((each) => plannedThrows(each, dayAt(each.startsAtMs))),
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
