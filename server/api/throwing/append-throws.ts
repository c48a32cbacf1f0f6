import type { z } from "zod";
import { keepRemark } from "@/server/data/remarks";
import { teamsOf } from "@/server/data/teams";
import { insertThrowEntry } from "@/server/data/throw-log";
import { Refusal } from "@/server/domain/errors/refusal";
import { entryRefusalInWords } from "@/server/domain/throwing/refusal-in-words";
import type { ThrowKind } from "@/server/domain/throwing/throw-entry";
import { entryRefusals, PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import { gameProblem, NO_GAME } from "@/server/domain/throwing/validate-game";
import type { Scope } from "../context";
import type { gameInput } from "./throws-input";

/** Throws of one day of the athlete in hand, as they came in. */
export interface TakenThrows {
  thrownOn: string;
  kind: ThrowKind;
  pitches: number;
  game: z.output<typeof gameInput> | null;
  note?: string | undefined;
  /** What the row belongs to, or corrects. */
  sessionId?: string | null;
  clipId?: string | null;
  replacesId?: string;
  importKey?: string;
}

/**
 * Writes throws of the athlete in hand onto the log, with what a game says.
 * @returns the id of the entry
 * @throws Refusal `throw_entry_invalid` when they cannot be so, or name a team that is not the athlete's; then nothing
 * is written
 */
export async function appendThrows(scope: Scope, thrown: TakenThrows): Promise<string> {
  const { db, actor, nowMs, athlete } = scope;
  const why = await problemOf(scope, thrown);
  if (why) throw new Refusal({ reason: "throw_entry_invalid", why });
  const { game, note, ...entry } = thrown;
  const { opponent, ...details } = game ?? { opponent: "", ...NO_GAME };
  return insertThrowEntry(db, {
    ...{ ...entry, ...details, athleteId: athlete.athleteId },
    ...{ remarkId: await keepRemark(db, note), opponentRemarkId: await keepRemark(db, opponent) },
    ...{ reportedByPersonId: actor.personId, reportedAtMs: nowMs },
  });
}

async function problemOf({ db, athlete, today }: Scope, thrown: TakenThrows): Promise<string | null> {
  const bounds = { bornOn: athlete.bornOn, today, plausibleMaxPitches: PLAUSIBLE_MAX_PITCHES };
  const [refusal] = entryRefusals(thrown, bounds);
  if (refusal) return entryRefusalInWords(refusal);
  const { game, kind, pitches } = thrown;
  if (!game) return null;
  const teams = await teamsOf(db, athlete.athleteId);
  return gameProblem(
    { ...game, kind, pitches },
    teams.map((team) => team.id),
  );
}
