import type { Db } from "@/db/client";
import type { SessionKind } from "@/server/domain/calendar/session-kind";
import type { OverrideRow } from "@/server/domain/rule-books/limit-override";
import type { PainClearance, PainReport } from "@/server/domain/throwing/pain";
import type { PlannedThrows, ThrowEntry } from "@/server/domain/throwing/throw-entry";
import type { CalendarDay } from "@/server/domain/time/calendar-day";

/** A row of something that belongs to an athlete. */
type Of<Row> = Row & { athleteId: string };

/** What is read of arms by their ids. */
interface RowsByName {
  arms: Of<{ bornOn: CalendarDay; joinedOn: CalendarDay; bookId: string; zone: string }>;
  /** The books of the teams an arm pitches for now. */
  teamBooks: Of<{ bookId: string }>;
  /** Entries that stand, the earliest first for each arm. */
  entries: ThrowEntry;
  /** The same and those that were corrected, wherever the correction moved them. */
  everyEntry: ThrowEntry;
  outings: Of<PlannedThrows>;
  booked: Of<{ sessionId: string; startsAtMs: number; kind: SessionKind; pitches: number }>;
  reports: Of<PainReport>;
  clearances: Of<PainClearance>;
  overrides: Of<OverrideRow>;
  /** The last day an entry that stands is of, and when a coach last asked before mound work. */
  spokenOf: Of<{ thrownOn: CalendarDay | null; askedAtMs: number | null }>;
}

/** The rows of one kind. */
export type ArmRows<Name extends keyof RowsByName> = RowsByName[Name][];

/**
 * Which arms, and from when on. Entries of `farIds` are read from `farSinceDay` on: their books add up more days than
 * the others look back.
 */
export interface ArmsAsked {
  ids: readonly string[];
  sinceDay: CalendarDay;
  sinceMs: number;
  farIds: readonly string[];
  farSinceDay: CalendarDay;
}

/* The arms come first in every statement, so that each one's rows are a stretch of an index. */
const CHOSEN = "json_each(@ids) chosen";
const SINCE = "iif(chosen.value IN (SELECT value FROM json_each(@farIds)), @farSinceDay, @sinceDay)";
const ENTRY = (of: string) => `
  ${of}.id, ${of}.athlete_id AS athleteId, ${of}.thrown_on AS thrownOn, ${of}.kind, ${of}.pitches, ${of}.outs,
  ${of}.innings_caught AS inningsCaught, ${of}.pitches_at_last_batter AS pitchesAtLastBatter,
  ${of}.intentional_walks AS intentionalWalks, ${of}.team_id AS teamId, ${of}.replaces_id AS replacesId,
  ${of}.reported_at_ms AS reportedAtMs`;
const STANDS = "NOT EXISTS (SELECT 1 FROM throw_entry later WHERE later.replaces_id = e.id)";
const BOOKED = `
  SELECT x.athlete_id AS athleteId, s.id AS sessionId, s.starts_at_ms AS startsAtMs, s.kind, x.planned_pitches AS pitches`;
const STILL_BOOKED = "s.starts_at_ms >= @sinceMs AND s.state IN ('booked', 'checked_in')";

const STATEMENTS: Record<keyof RowsByName | "bookedOfMany", string> = {
  arms: `
    SELECT a.id AS athleteId, a.born_on AS bornOn, a.joined_on AS joinedOn, a.rule_book_id AS bookId, s.zone
    FROM ${CHOSEN} CROSS JOIN athlete a ON a.id = chosen.value CROSS JOIN site s ON s.id = a.home_site_id`,
  teamBooks: `
    SELECT t.athlete_id AS athleteId, t.rule_book_id AS bookId
    FROM ${CHOSEN} CROSS JOIN athlete_team t ON t.athlete_id = chosen.value
    WHERE t.ended_at_ms IS NULL ORDER BY t.added_at_ms, t.id`,
  entries: `
    SELECT ${ENTRY("e")} FROM ${CHOSEN} CROSS JOIN throw_entry e ON e.athlete_id = chosen.value
    WHERE e.thrown_on >= ${SINCE} AND ${STANDS}`,
  everyEntry: `
    SELECT ${ENTRY("e")} FROM ${CHOSEN} CROSS JOIN throw_entry e ON e.athlete_id = chosen.value
    WHERE e.thrown_on >= ${SINCE}
    UNION ALL
    SELECT ${ENTRY("moved")} FROM ${CHOSEN} CROSS JOIN throw_entry e ON e.athlete_id = chosen.value
    CROSS JOIN throw_entry moved ON moved.replaces_id = e.id
    WHERE e.thrown_on >= ${SINCE} AND moved.thrown_on < ${SINCE}`,
  outings: `
    SELECT o.id, o.athlete_id AS athleteId, o.planned_on AS plannedOn, 'game' AS kind, o.pitches, o.team_id AS teamId
    FROM ${CHOSEN} CROSS JOIN planned_outing o ON o.athlete_id = chosen.value
    WHERE o.planned_on >= @sinceDay AND o.cancelled_at_ms IS NULL`,
  booked: `
    ${BOOKED} FROM ${CHOSEN} CROSS JOIN session_athlete x ON x.athlete_id = chosen.value
    CROSS JOIN session s ON s.id = x.session_id WHERE ${STILL_BOOKED}`,
  bookedOfMany: `
    ${BOOKED} FROM session s CROSS JOIN session_athlete x ON x.session_id = s.id WHERE ${STILL_BOOKED}`,
  reports: `
    SELECT r.id, r.athlete_id AS athleteId, r.kind, r.felt_on AS feltOn, r.reported_at_ms AS reportedAtMs
    FROM ${CHOSEN} CROSS JOIN pain_report r ON r.athlete_id = chosen.value`,
  clearances: `
    SELECT c.athlete_id AS athleteId, c.cleared_at_ms AS clearedAtMs
    FROM ${CHOSEN} CROSS JOIN pain_clearance c ON c.athlete_id = chosen.value`,
  overrides: `
    SELECT o.id, o.athlete_id AS athleteId, o.day, o.pitches, o.at_ms AS atMs
    FROM ${CHOSEN} CROSS JOIN limit_override o ON o.athlete_id = chosen.value
    WHERE o.day >= @sinceDay ORDER BY o.at_ms, o.id`,
  spokenOf: `
    SELECT chosen.value AS athleteId,
      (SELECT e.thrown_on FROM throw_entry e WHERE e.athlete_id = chosen.value AND ${STANDS}
       ORDER BY e.thrown_on DESC LIMIT 1) AS thrownOn,
      (SELECT max(c.at_ms) FROM check_in c WHERE c.athlete_id = chosen.value) AS askedAtMs
    FROM ${CHOSEN}`,
};

/** More arms than this are a good part of the academy: then its sessions are read by time, and not arm by arm. */
const MANY = 100;

/**
 * A reader of what is known of some arms, by bare statements: one arm is asked about on every screen, and thousands on
 * the board. Rows of arms that were not asked for may be among many booked sessions.
 */
export function armReader(db: Db, { ids, farIds, ...since }: ArmsAsked) {
  const asked = { ...since, ids: JSON.stringify(ids), farIds: JSON.stringify(farIds) };
  return <Name extends keyof RowsByName>(name: Name): ArmRows<Name> => {
    const statement = name === "booked" && ids.length > MANY ? "bookedOfMany" : name;
    return prepared(db, STATEMENTS[statement]).all(asked) as ArmRows<Name>;
  };
}

type Statement = ReturnType<Db["$client"]["prepare"]>;

/* A statement is made ready once for each connection: that costs as much as running it. */
const READY = new WeakMap<Db["$client"], Map<string, Statement>>();

function prepared({ $client }: Db, sql: string): Statement {
  const ready = READY.get($client) ?? new Map<string, Statement>();
  READY.set($client, ready);
  const statement = ready.get(sql) ?? $client.prepare(sql);
  ready.set(sql, statement);
  return statement;
}

/** Rows by the athlete they belong to, in their order. */
export function byAthlete<Row extends { athleteId: string }>(rows: readonly Row[]): Map<string, Row[]> {
  const grouped = new Map<string, Row[]>();
  for (const row of rows) {
    const own = grouped.get(row.athleteId);
    if (own) own.push(row);
    else grouped.set(row.athleteId, [row]);
  }
  return grouped;
}
