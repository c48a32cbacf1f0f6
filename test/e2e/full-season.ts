import { Sqlite } from "../../db/driver";
import { idOf, personOf } from "./demo-records";

const WORDS = "Stay tall over the back leg, then land soft and stand firm. ";

/**
 * Gives an athlete of 16 or more, whom no other journey is about, sixty corrections of this season that hold, each with a
 * cue as long as one may be. @returns whose season it is
 */
export function fillSeason(): string {
  const athleteId = idOf(
    `SELECT c.athlete_id FROM correction c JOIN athlete t ON t.id = c.athlete_id
     WHERE t.born_on < '2010-11-26' AND t.person_id <> ? AND t.left_on IS NULL ORDER BY c.athlete_id`,
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
  const cue = WORDS.repeat(9).slice(0, 500);
  sqlite.transaction(() => {
    for (let at = Number(own); at < 60; at += 1) {
      const id = `cor_full_${at}`;
      const givenAtMs = Date.UTC(2026, 2, 1 + at, 15);
      correction.run({ id, cue, givenAtMs, athleteId });
      event.run({ id: `cev_given_${at}`, correctionId: id, kind: "given", actor, atMs: givenAtMs });
      event.run({
        ...{ id: `cev_held_${at}`, correctionId: id, kind: "confirmed", actor },
        atMs: givenAtMs + 30 * 86_400_000,
      });
    }
  })();
  sqlite.close();
  return athleteId;
}
