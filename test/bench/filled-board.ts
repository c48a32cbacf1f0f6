import type { openSqlite } from "@/db/client";
import { STARTING_SETTINGS } from "@/server/domain/people/academy-settings";
import { addDays } from "@/server/domain/time/calendar-day";
import { NOW_MS } from "./filled-records";

type Sqlite = ReturnType<typeof openSqlite>;

const SEASONS = 3;
const THROWS_A_SEASON = 100;
const TODAY = "2026-11-25";
const COACHES = 20;

/**
 * Writes an academy of two sites with so many athletes, three seasons of throws each (one row in a hundred corrected),
 * two booked sessions and a planned outing; one arm in fifty hurts.
 * @returns the athletes' ids
 */
export function fillBoard(sqlite: Sqlite, athletes: number): string[] {
  sqlite.pragma("foreign_keys = OFF");
  const ids = Array.from({ length: athletes }, (_, index) => `ath_${String(index).padStart(5, "0")}`);
  const days = Array.from({ length: SEASONS * 365 }, (_, index) => addDays(TODAY, -index));
  sqlite.transaction(() => {
    fillPlaces(sqlite);
    for (const [index, id] of ids.entries()) {
      fillAthlete(sqlite, id, index);
      fillThrows(sqlite, id, index, days);
      fillAhead(sqlite, id, index);
    }
  })();
  sqlite.exec("ANALYZE");
  return ids;
}

function fillPlaces(sqlite: Sqlite) {
  const settings = { id: "academy", is_demo: 0, created_at_ms: NOW_MS, ...asColumns(STARTING_SETTINGS) };
  insert(sqlite, "academy", settings);
  for (const [id, zone] of [
    ["site_0", "America/New_York"],
    ["site_1", "America/Chicago"],
  ]) {
    insert(sqlite, "site", { id, name: id, zone, address: "1 Lane" });
  }
}

function fillAthlete(sqlite: Sqlite, id: string, index: number) {
  const names = { given_name: `Given${index % 97}`, family_name: `Family${index % 389}` };
  insert(sqlite, "person", { id: `per_${id}`, ...names, created_at_ms: NOW_MS });
  insert(sqlite, "athlete", {
    id,
    person_id: `per_${id}`,
    born_on: `${2004 + (index % 14)}-0${1 + (index % 9)}-11`,
    throws: "right",
    home_site_id: `site_${index % 2}`,
    coach_person_id: `coach_${index % COACHES}`,
    rule_book_id: "usa-baseball-2018",
    joined_on: "2023-01-05",
  });
}

function fillThrows(sqlite: Sqlite, id: string, index: number, days: readonly string[]) {
  const row = { athlete_id: id, reported_by_person_id: "per_1", reported_at_ms: NOW_MS };
  const count = SEASONS * THROWS_A_SEASON;
  for (let each = 0; each < count; each += 1) {
    const day = days[Math.floor((each * days.length) / count) + (index % 3)] ?? TODAY;
    const kind = each % 4 === 0 ? "game" : "bullpen";
    const pitches = 15 + ((each + index) % 8) * 6;
    insert(sqlite, "throw_entry", { id: `thr_${id}_${each}`, thrown_on: day, kind, pitches, ...row });
    if (each % 100 === 7) {
      const corrected = { id: `cor_${id}_${each}`, replaces_id: `thr_${id}_${each}`, thrown_on: day };
      insert(sqlite, "throw_entry", { ...corrected, kind, pitches: 20, ...row });
    }
  }
}

function fillAhead(sqlite: Sqlite, id: string, index: number) {
  for (const week of [0, 1]) {
    const startsAtMs = NOW_MS + (week * 7 + (index % 6) + 1) * 86_400_000;
    const sessionId = `ses_${id}_${week}`;
    insert(sqlite, "session", {
      id: sessionId,
      kind: index % 2 === 0 ? "bullpen" : "lesson",
      state: "booked",
      site_id: `site_${index % 2}`,
      lane_id: "lane",
      coach_person_id: `coach_${index % COACHES}`,
      starts_at_ms: startsAtMs,
      ends_at_ms: startsAtMs + 1_800_000,
      places: 1,
      booked_by_person_id: "per_1",
      booked_at_ms: 0,
    });
    insert(sqlite, "session_athlete", { session_id: sessionId, athlete_id: id, planned_pitches: 25 });
  }
  insert(sqlite, "planned_outing", {
    id: `out_${id}`,
    athlete_id: id,
    planned_on: addDays(TODAY, 2 + (index % 9)),
    pitches: 45,
    added_by_person_id: "per_1",
    added_at_ms: 0,
  });
  const asked = { session_id: `ses_${id}_0`, athlete_id: id, asked_by_person_id: "per_1" };
  insert(sqlite, "check_in", { id: `chk_${id}`, ...asked, thrown_since: 0, pain: 0, at_ms: NOW_MS });
  if (index % 50 !== 0) return;
  const felt = { kind: "pain", felt_on: addDays(TODAY, -3), reported_by_person_id: "per_1" };
  insert(sqlite, "pain_report", { id: `pan_${id}`, athlete_id: id, ...felt, reported_at_ms: NOW_MS });
}

type Row = Record<string, string | number | null | undefined>;

const statements = new Map<string, { run: (row: Row) => unknown }>();

function insert(sqlite: Sqlite, table: string, row: Row) {
  const columns = Object.keys(row);
  const sql = `INSERT INTO ${table} (${columns.join(", ")}) VALUES (${columns.map((name) => `@${name}`).join(", ")})`;
  const statement = statements.get(sql) ?? sqlite.prepare(sql);
  statements.set(sql, statement);
  statement.run(row);
}

/** Settings by the names of their columns; yes and no as 1 and 0, lists as JSON. */
function asColumns(settings: object): Row {
  return Object.fromEntries(
    Object.entries(settings).map(([name, value]) => [
      name.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`),
      typeof value === "boolean" ? Number(value) : typeof value === "object" ? JSON.stringify(value) : value,
    ]),
  );
}
