import type { Db } from "@/db/client";
import type { SessionKind } from "@/server/domain/calendar/session-kind";
import type { OverrideRow } from "@/server/domain/rule-books/limit-override";
import type { PainClearance, PainReport } from "@/server/domain/throwing/pain";
import type { PlannedThrows, ThrowEntry } from "@/server/domain/throwing/throw-entry";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** Which arms a board holds; null stands for all. */
export interface BoardFilter {
  coachPersonId: string | null;
  siteId: string | null;
  /** The name of a team that the athlete is on now. */
  team: string | null;
}

/** From when on rows are read, and which athletes are left out at once: those who left on this day or before. */
export interface BoardSince {
  sinceDay: CalendarDay;
  sinceMs: number;
  leftAfter: CalendarDay;
}

interface ArmRow {
  athleteId: string;
  givenName: string;
  familyName: string;
  bornOn: CalendarDay;
  joinedOn: CalendarDay;
  leftOn: CalendarDay | null;
  bookId: string;
  zone: string;
}

/** A row of something that belongs to an athlete. */
type Of<Row> = Row & { athleteId: string };

/** The rows a board rests on, each kind read once for all its arms. */
export interface BoardRows {
  /** By family name. */
  arms: ArmRow[];
  /** Corrected rows are left out; the earliest first for each athlete. */
  entries: ThrowEntry[];
  outings: Of<PlannedThrows>[];
  booked: Of<{ id: string; startsAtMs: number; kind: SessionKind; pitches: number }>[];
  reports: Of<PainReport>[];
  clearances: Of<PainClearance>[];
  overrides: Of<OverrideRow>[];
  teamBooks: Of<{ bookId: string }>[];
}

const CHOSEN = `(
  SELECT a.id FROM athlete a
  WHERE (a.left_on IS NULL OR a.left_on > @leftAfter)
    AND (@coachPersonId IS NULL OR a.coach_person_id = @coachPersonId)
    AND (@siteId IS NULL OR a.home_site_id = @siteId)
    AND (@team IS NULL OR EXISTS (
      SELECT 1 FROM athlete_team t WHERE t.athlete_id = a.id AND t.name = @team AND t.ended_at_ms IS NULL))
) chosen`;

/* The chosen arms come first in every statement, so that each one's rows are a stretch of an index. */
const STATEMENTS: Record<keyof BoardRows, string> = {
  arms: `
    SELECT a.id AS athleteId, p.given_name AS givenName, p.family_name AS familyName, a.born_on AS bornOn,
      a.joined_on AS joinedOn, a.left_on AS leftOn, a.rule_book_id AS bookId, s.zone
    FROM ${CHOSEN} JOIN athlete a ON a.id = chosen.id
    JOIN person p ON p.id = a.person_id JOIN site s ON s.id = a.home_site_id
    ORDER BY p.family_name, p.given_name, a.id`,
  entries: `
    SELECT e.id, e.athlete_id AS athleteId, e.thrown_on AS thrownOn, e.kind, e.pitches, e.outs,
      e.innings_caught AS inningsCaught, e.pitches_at_last_batter AS pitchesAtLastBatter,
      e.intentional_walks AS intentionalWalks, e.team_id AS teamId, NULL AS replacesId,
      e.reported_at_ms AS reportedAtMs
    FROM ${CHOSEN} CROSS JOIN throw_entry e ON e.athlete_id = chosen.id
    WHERE e.thrown_on >= @sinceDay
      AND NOT EXISTS (SELECT 1 FROM throw_entry later WHERE later.replaces_id = e.id)`,
  outings: `
    SELECT o.id, o.athlete_id AS athleteId, o.planned_on AS plannedOn, 'game' AS kind, o.pitches, o.team_id AS teamId
    FROM ${CHOSEN} CROSS JOIN planned_outing o ON o.athlete_id = chosen.id
    WHERE o.planned_on >= @sinceDay AND o.cancelled_at_ms IS NULL`,
  booked: `
    SELECT x.session_id AS id, x.athlete_id AS athleteId, s.starts_at_ms AS startsAtMs, s.kind,
      x.planned_pitches AS pitches
    FROM session s CROSS JOIN session_athlete x ON x.session_id = s.id
    WHERE s.starts_at_ms >= @sinceMs AND s.state IN ('booked', 'checked_in')`,
  reports: `
    SELECT r.id, r.athlete_id AS athleteId, r.kind, r.felt_on AS feltOn, r.reported_at_ms AS reportedAtMs
    FROM ${CHOSEN} CROSS JOIN pain_report r ON r.athlete_id = chosen.id`,
  clearances: `
    SELECT c.athlete_id AS athleteId, c.cleared_at_ms AS clearedAtMs
    FROM ${CHOSEN} CROSS JOIN pain_clearance c ON c.athlete_id = chosen.id`,
  overrides: `
    SELECT o.id, o.athlete_id AS athleteId, o.day, o.pitches, o.at_ms AS atMs
    FROM ${CHOSEN} CROSS JOIN limit_override o ON o.athlete_id = chosen.id
    WHERE o.day >= @sinceDay ORDER BY o.at_ms, o.id`,
  teamBooks: `
    SELECT t.athlete_id AS athleteId, t.rule_book_id AS bookId
    FROM ${CHOSEN} CROSS JOIN athlete_team t ON t.athlete_id = chosen.id
    WHERE t.ended_at_ms IS NULL ORDER BY t.added_at_ms, t.id`,
};

/**
 * Reads everything of the chosen arms at once, by bare statements: for thousands of arms the rows must come as fast as
 * the database gives them.
 */
export function readBoardRows(db: Db, filter: BoardFilter, since: BoardSince): BoardRows {
  const asked = { ...filter, ...since };
  const rowsOf = (name: keyof BoardRows) => db.$client.prepare(STATEMENTS[name]).all(asked);
  const names = Object.keys(STATEMENTS) as (keyof BoardRows)[];
  return Object.fromEntries(names.map((name) => [name, rowsOf(name)])) as unknown as BoardRows;
}
