import { z } from "zod";
import { athleteScope } from "@/server/data/access";
import { tellOfSessionsWithoutRoom } from "@/server/data/flag-sessions";
import { listBooks } from "@/server/data/rule-books";
import { endTeam, insertTeam, teamScope, teamsOf } from "@/server/data/teams";
import { Refusal } from "@/server/domain/errors/refusal";
import { newTeamProblem } from "@/server/domain/throwing/team";
import { TEAM_NAME_MAX_LENGTH } from "@/server/domain/throwing/validate-game";
import { DONE, done } from "../done";
import { noteAct } from "../note-act";
import { command } from "../procedures";
import { offered } from "../throwing/team-answer";
import { router } from "../trpc";

const id = z.string().min(1).max(60);

export const teamsRouter = router({
  /** Adds a team or league with the book it plays by: the stricter of the athlete's books wins from now on. */
  add: command({
    action: "team.manage",
    input: z.strictObject({ athleteId: id, name: z.string().max(TEAM_NAME_MAX_LENGTH), ruleBookId: id }),
    output: z.strictObject({ teamId: z.string() }),
    athlete: (db, input) => athleteScope(db, input.athleteId),
    async run(scope, { athleteId, ruleBookId, name }) {
      const { db, actor, nowMs } = scope;
      const bookIds = offered(await listBooks(db)).map((book) => book.id);
      const why = newTeamProblem({ name, ruleBookId }, await teamsOf(db, athleteId), bookIds);
      if (why) throw new Refusal({ reason: "settings_invalid", why });
      const by = { addedByPersonId: actor.personId, addedAtMs: nowMs };
      const teamId = await insertTeam(db, { athleteId, name: name.trim(), ruleBookId, ...by });
      await noteAct(scope, "team.add", athleteId, { teamId, ruleBookId });
      await tellOfSessionsWithoutRoom(db, athleteId, nowMs);
      return { teamId };
    },
  }),

  /** Ends a team: its book binds no longer, what was logged for it stays. */
  end: command({
    action: "team.manage",
    input: z.strictObject({ teamId: id }),
    output: done,
    athlete: (db, input) => teamScope(db, input.teamId),
    async run(scope, { teamId }) {
      await endTeam(scope.db, teamId, scope.nowMs);
      await noteAct(scope, "team.end", scope.athlete.athleteId, { teamId });
      return DONE;
    },
  }),
});
