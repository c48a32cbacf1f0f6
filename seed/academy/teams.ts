import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import type { GameDetails } from "@/server/domain/throwing/validate-game";
import type { Random } from "../seeded-random";
import { type Athlete, speakerFor } from "./roster";
import { at, type World } from "./world";

/** Teams of the town, all of them invented. */
const TEAMS = ["River Nine", "Mill Road", "Hill Club", "Harbor Side", "North Yard"];

/** How many pitches an out takes, about; common practice, no source. */
const PITCHES_AN_OUT = 5;

/** The team of an athlete who has one: named when they joined, by the book they go by themselves. */
export function buildTeam(world: World, athlete: Athlete): void {
  const random = athlete.random.fork("team");
  if (!random.chance(0.7)) return;
  const id = world.id("tea");
  athlete.teamId = id;
  world.rows.athleteTeam.push({
    ...{ id, athleteId: athlete.id, name: random.pick(TEAMS), ruleBookId: USA_BASEBALL_2018.id },
    addedByPersonId: speakerFor(athlete, athlete.joinedOn),
    addedAtMs: at(world, athlete.joinedOn, 1200),
  });
}

/** What is said of a game of so many pitches: most families tell the outs and the last batter. */
export function gameSaid(random: Random, pitches: number, teamId: string | null): Partial<GameDetails> {
  if (!random.chance(0.8)) return { teamId };
  const outs = Math.floor(pitches / PITCHES_AN_OUT) - random.int(0, 1);
  return { teamId, outs, pitchesAtLastBatter: pitches - random.int(1, 5) };
}
