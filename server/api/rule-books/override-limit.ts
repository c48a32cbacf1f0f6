import { armOf } from "@/server/data/arms";
import { insertOverride, listOverrides, tellOfOverride } from "@/server/data/limit-overrides";
import { nameOf } from "@/server/data/names";
import { Refusal } from "@/server/domain/errors/refusal";
import { fullName } from "@/server/domain/people/person";
import { overrideProblem, standingOverrides } from "@/server/domain/rule-books/limit-override";
import { dayLoads } from "@/server/domain/throwing/day-load";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import type { Scope } from "../context";
import { noteAct } from "../note-act";

/** An override as it is asked for. 0 pitches take an earlier one of the day back. */
export interface AskedOverride {
  athleteId: string;
  day: string;
  pitches: number;
  reason: string;
}

/**
 * Overrides a limit for one athlete and day, or takes that back: written, told to the guardians and the coach and put
 * on the record, all or none. Refused while the arm is stopped: nothing overrides pain.
 */
export async function overrideLimit(scope: Scope, asked: AskedOverride): Promise<void> {
  const { db, actor, nowMs, today } = scope;
  const { athleteId, day, pitches, reason } = asked;
  const arm = await armOf(db, athleteId, nowMs);
  if (arm.pain) throw new Refusal({ reason: "nothing_overrides_pain", since: arm.pain.firstFeltOn });
  const byTheBook = pitchesAllowed({ ...arm, overrides: [], day }).pitches;
  const standing = standingOverrides(await listOverrides(db, athleteId));
  const isStanding = standing.some((each) => each.day === day);
  const already = dayLoads(arm).get(day)?.pitches ?? 0;
  const why = overrideProblem(asked, { today, byTheBook, already, isStanding });
  if (why) throw new Refusal({ reason: "override_invalid", why });
  await insertOverride(db, { ...asked, byPersonId: actor.personId, atMs: nowMs });
  const byName = fullName(await nameOf(db, actor.personId));
  await tellOfOverride(db, athleteId, { day, pitches, byTheBook, reason, byName }, nowMs);
  const act = pitches === 0 ? "limit.override_taken_back" : "limit.overridden";
  await noteAct(scope, act, athleteId, { day, pitches, byTheBook });
}
