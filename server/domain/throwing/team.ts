import { TEAM_NAME_MAX_LENGTH } from "./validate-game";

/** More teams at once than this are taken for a slip; common practice, no source. */
export const MOST_TEAMS = 8;

/** A team as far as its name and whether it still stands. */
interface KnownTeam {
  id: string;
  name: string;
  endedAtMs: number | null;
}

/**
 * Why an outing cannot be planned for a team, in a sentence, or null. No team is fine.
 * @param teams the athlete's, ended ones too
 */
export function teamProblem(teamId: string | null, teams: readonly KnownTeam[]): string | null {
  if (teamId === null) return null;
  const team = teams.find((each) => each.id === teamId);
  if (!team) return "That is not a team of this athlete.";
  return team.endedAtMs === null ? null : `The time with ${team.name} has ended: choose another team.`;
}

/**
 * Why a team cannot be added, in a sentence, or null.
 * @param teams the athlete's, ended ones too; the name of one that ended may come again
 */
export function newTeamProblem(
  team: { name: string; ruleBookId: string },
  teams: readonly KnownTeam[],
  bookIds: readonly string[],
): string | null {
  const name = team.name.trim();
  const current = teams.filter((each) => each.endedAtMs === null);
  if (name.length === 0) return "Name the team or league.";
  if (name.length > TEAM_NAME_MAX_LENGTH) return `The name fits in ${TEAM_NAME_MAX_LENGTH} characters.`;
  if (!bookIds.includes(team.ruleBookId)) return "Choose a rule book from the list.";
  if (current.some((each) => each.name.toLowerCase() === name.toLowerCase())) {
    return `${name} is on the list already.`;
  }
  return current.length < MOST_TEAMS ? null : `At most ${MOST_TEAMS} teams at once: end one first.`;
}
