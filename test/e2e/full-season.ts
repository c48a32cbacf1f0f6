import { Sqlite } from "../../db/driver";
import { idOf, personOf } from "./demo-records";

/**
 * Gives an athlete of 16 or more, whom no other journey is about, sixty corrections of this season that hold, each with
 * the cue; another athlete each time. @returns whose season it is
 */
export function fillSeason(cue: string): string {
  const athleteId = idOf(
    `SELECT c.athlete_id FROM correction c JOIN athlete t ON t.id = c.athlete_id
     WHERE t.born_on < '2010-11-26' AND t.person_id <> ? AND t.left_on IS NULL
       AND NOT EXISTS (SELECT 1 FROM correction f WHERE f.athlete_id = t.id AND f.id LIKE 'cor_full_%')
     ORDER BY c.athlete_id`,
    personOf("athlete"),
  );
  const sqlite = new Sqlite(`${process.env.SLABSIDE_E2E_FOLDER}/data/slabside.sqlite`);
  sqlite.pragma("busy_timeout = 5000");
  const own = sqlite.prepare("SELECT count(*) FROM correction WHERE athlete_id = ?").pluck().get(athleteId);
  const correction = sqlite.prepare(
    `INSERT INTO correction (id, athlete_id, review_id, round_id, checkpoint_id, phase, cue, drill, position, state, given_at_ms)
     SELECT @id, athlete_id, review_id, round_id, checkpoint_id, phase, @cue, drill, position, 'held', @givenAtMs
     FROM correction WHERE athlete_id = @athleteId ORDER BY id LIMIT 1`,
  );
  const event = sqlite.prepare(
    `INSERT INTO correction_event (id, correction_id, kind, actor_person_id, at_ms)
     VALUES (@id, @correctionId, @kind, @actor, @atMs)`,
  );
  const actor = personOf("coach");
  sqlite.transaction(() => {
    for (let at = Number(own); at < 60; at += 1) {
      const id = `cor_full_${athleteId}_${at}`;
      const givenAtMs = Date.UTC(2026, 2, 1 + at, 15);
      correction.run({ id, cue, givenAtMs, athleteId });
      event.run({ id: `cev_given_${id}`, correctionId: id, kind: "given", actor, atMs: givenAtMs });
      event.run({
        ...{ id: `cev_held_${id}`, correctionId: id, kind: "confirmed", actor },
        atMs: Date.UTC(2026, 10, 24, 15, at),
      });
    }
  })();
  sqlite.close();
  return athleteId;
}
