import { isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { athleteTeam } from "@/db/schema/throwing";
import { placeNames } from "./academy-time";

/** What a board can be narrowed to: who coaches, teams by name, live sites; each by name. */
export interface BoardChoices {
  coaches: { id: string; name: string }[];
  teams: string[];
  sites: { id: string; name: string; zone: string }[];
}

/** The choices there are now. A team that several athletes are on is one choice; one nobody is on any more is none. */
export async function boardChoices(db: Db): Promise<BoardChoices> {
  const { coaches, sites } = await placeNames(db);
  const teams = await db
    .selectDistinct({ name: athleteTeam.name })
    .from(athleteTeam)
    .where(isNull(athleteTeam.endedAtMs))
    .orderBy(athleteTeam.name);
  return { coaches, sites, teams: teams.map((team) => team.name) };
}
