import type { Random } from "../seeded-random";
import type { Athlete } from "./roster";
import type { Theme } from "./themes";
import type { World } from "./world";

/** One athlete's season while it is told: what shows by now, and how well it takes. */
export interface Story {
  world: World;
  athlete: Athlete;
  themes: Theme[];
  /** Most athletes get better between two clips; some do not. */
  improves: boolean;
  random: Random;
  /** The latest settled round, which a session may follow up. */
  settled: { roundId: string; atMs: number } | null;
}
