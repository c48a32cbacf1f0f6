import { readFileSync } from "node:fs";
import { Sqlite } from "../../db/driver";

/** A family of the demo, as a journey needs it. */
export interface Family {
  athleteId: string;
  name: string;
  guardianEmail: string;
}

/** An athlete of the demo coach with room for three corrections, nothing under way, and a guardian who signs in. */
export function chooseFamily(): Family {
  return familyWhere(`coach.email = 'coach@slabside.example' AND t.throws = 'right'
    AND (SELECT count(*) FROM correction c WHERE c.athlete_id = t.id AND c.state IN ('given', 'showing')) <= 2
    AND NOT EXISTS (SELECT 1 FROM round r WHERE r.athlete_id = t.id
                    AND r.state NOT IN ('settled', 'withdrawn', 'lapsed'))`);
}

/** An athlete of another coach than the demo's, and a guardian who signs in. */
export function chooseOtherFamily(): Family {
  return familyWhere("coach.email <> 'coach@slabside.example'");
}

/** An athlete of 11 or 12 in January 2027 with nothing booked or planned in it, and a guardian who signs in. */
export function chooseTwelveYearOld(): Family {
  return familyWhere(`t.born_on BETWEEN '2014-01-31' AND '2015-12-31' AND t.left_on IS NULL
    AND NOT EXISTS (SELECT 1 FROM session s JOIN session_athlete a ON a.session_id = s.id
                    WHERE a.athlete_id = t.id AND s.state = 'booked'
                      AND s.starts_at_ms > unixepoch('2027-01-01') * 1000)
    AND NOT EXISTS (SELECT 1 FROM planned_outing o WHERE o.athlete_id = t.id AND o.planned_on > '2026-12-31')`);
}

function familyWhere(condition: string): Family {
  const sqlite = database();
  const row = sqlite
    .prepare(
      `SELECT t.id AS athleteId, p.given_name || ' ' || p.family_name AS name, a.email AS guardianEmail
       FROM athlete t JOIN person p ON p.id = t.person_id
       JOIN account coach ON coach.person_id = t.coach_person_id
       JOIN guardianship g ON g.athlete_id = t.id JOIN account a ON a.person_id = g.guardian_person_id
       WHERE t.born_on BETWEEN '2013-11-26' AND '2016-11-25'
         AND EXISTS (SELECT 1 FROM session_athlete earlier WHERE earlier.athlete_id = t.id)
         AND NOT EXISTS (SELECT 1 FROM pain_report pain WHERE pain.athlete_id = t.id) AND ${condition}
       ORDER BY t.id LIMIT 1`,
    )
    .get() as Family | undefined;
  sqlite.close();
  if (!row) throw new Error(`The demo has no family for a journey where ${condition}`);
  return row;
}

/** The database of the academy under test, to look at only. */
export function database() {
  return new Sqlite(`${process.env.SLABSIDE_E2E_FOLDER}/data/slabside.sqlite`, { readonly: true });
}

/** Path of a drawn phone clip. */
export function clipFile(which: "first" | "reply"): string {
  return `${process.env.SLABSIDE_E2E_FOLDER}/${which}.mp4`;
}

/** The true frames of its events, from the sidecar. */
export function eventFrames(which: "first" | "reply"): Record<string, number> {
  return JSON.parse(readFileSync(clipFile(which).replace(".mp4", ".json"), "utf8")).events;
}

/** When a session starts, in epoch milliseconds. */
export function startOf(sessionId: string): number {
  const sqlite = database();
  const row = sqlite.prepare("SELECT starts_at_ms AS startsAtMs FROM session WHERE id = ?").get(sessionId);
  sqlite.close();
  return (row as { startsAtMs: number }).startsAtMs;
}

/** The first column of the first row that a query finds; fails, naming the query, when there is none. */
export function idOf(query: string, ...values: string[]): string {
  const sqlite = database();
  const id = sqlite
    .prepare(query)
    .pluck()
    .get(...values);
  sqlite.close();
  if (typeof id !== "string") throw new Error(`The demo has nothing for: ${query} ${values.join(", ")}`);
  return id;
}

/** The person behind a sign-in of the demo. */
export const personOf = (who: string): string =>
  idOf("SELECT person_id FROM account WHERE email = ?", `${who}@slabside.example`);

/** The athletes whose screens a guardian or an athlete of the demo opens, youngest first. */
export function athletesOf(who: "guardian" | "athlete"): string[] {
  const sqlite = database();
  const ids = sqlite
    .prepare(
      `SELECT t.id FROM athlete t LEFT JOIN guardianship g ON g.athlete_id = t.id
       WHERE ? IN (t.person_id, g.guardian_person_id) GROUP BY t.id ORDER BY t.born_on DESC`,
    )
    .pluck()
    .all(personOf(who));
  sqlite.close();
  return ids as string[];
}
