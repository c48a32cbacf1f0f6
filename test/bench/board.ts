import { applyMigrations } from "@/db/apply-migrations";
import { connect, type Db, openSqlite } from "@/db/client";
import { armsBoardFor } from "@/server/api/arms-board-view";
import { armOf } from "@/server/data/arms";
import { armsForBoard } from "@/server/data/arms-board";
import { encodeCells } from "@/server/domain/throwing/board-cell";
import { boardCells, boardDaysAround } from "@/server/domain/throwing/board-row";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { fillBoard } from "./filled-board";
import { NOW_MS } from "./filled-records";
import { compare, type Figure, slowest } from "./measure";

const ATHLETES = 2000;
const DAYS = boardDaysAround("2026-11-25");
const EVERYTHING = { coachPersonId: null, siteId: null, team: null };

/** The rows a board needs, as bare statements read them: what is there of each arm since 26 days before its first day. */
const NEEDED = [
  `SELECT a.id, p.given_name, p.family_name, a.born_on, a.joined_on, a.left_on, a.rule_book_id, s.zone
   FROM athlete a JOIN person p ON p.id = a.person_id JOIN site s ON s.id = a.home_site_id
   ORDER BY p.family_name, p.given_name, a.id`,
  `SELECT e.id, e.athlete_id, e.thrown_on, e.kind, e.pitches, e.outs, e.innings_caught,
     e.pitches_at_last_batter, e.intentional_walks, e.team_id, e.reported_at_ms
   FROM athlete a CROSS JOIN throw_entry e ON e.athlete_id = a.id
   WHERE e.thrown_on >= '2026-10-16' AND NOT EXISTS (SELECT 1 FROM throw_entry l WHERE l.replaces_id = e.id)`,
  `SELECT id, athlete_id, planned_on, pitches, team_id FROM planned_outing
   WHERE planned_on >= '2026-10-16' AND cancelled_at_ms IS NULL`,
  `SELECT x.session_id, x.athlete_id, s.starts_at_ms, s.kind, x.planned_pitches
   FROM session s CROSS JOIN session_athlete x ON x.session_id = s.id
   WHERE s.starts_at_ms >= ${Date.UTC(2026, 9, 16)} AND s.state IN ('booked', 'checked_in')`,
  "SELECT id, athlete_id, kind, felt_on, reported_at_ms FROM pain_report",
  "SELECT athlete_id, cleared_at_ms FROM pain_clearance",
];

/**
 * The arms board of 2,000 athletes with three seasons of throws: every arm decided for every day, against reading the
 * rows that takes; the page as a screen asks for it; and one arm's answer for today.
 */
export async function measureBoard(folder: string): Promise<Figure[]> {
  const path = `${folder}/board.sqlite`;
  const bare = openSqlite(path);
  applyMigrations(bare);
  const ids = fillBoard(bare, ATHLETES);
  const on = connect(path);
  const needed = NEEDED.map((sql) => bare.prepare(sql));
  const whole = await compare(
    `The arms board: ${ATHLETES} arms by ${DAYS.length} days, read and decided, against reading their rows bare`,
    3,
    () => wholeBoard(on.reader),
    () => needed.map((statement) => statement.all()),
  );
  const page = await slowest(
    "The arms board's first page as a screen asks for it, of 2,000 arms",
    1000,
    20,
    () =>
      armsBoardFor(
        { db: on.reader, nowMs: NOW_MS },
        { coach: null, team: null, site: null, order: "limit", page: 1 },
      ),
  );
  const one = await slowest("What the book leaves one arm of 2,000 today", 2, 400, async (round) => {
    const arm = await armOf(on.reader, ids[(round * 7) % ids.length] ?? "", NOW_MS);
    return pitchesAllowed({ ...arm, day: arm.today });
  });
  on.close();
  bare.close();
  return [whole, page, one];
}

async function wholeBoard(db: Db): Promise<string[]> {
  const arms = await armsForBoard(db, EVERYTHING, { nowMs: NOW_MS, fromDay: DAYS[0] ?? "" });
  if (arms.length !== ATHLETES) throw new Error("The board is not whole.");
  return arms.map((arm) => encodeCells(boardCells(arm.question, DAYS)));
}
