import { bookedFrom, roundsOwedTo, saveLeaving, stayOf } from "@/server/data/leaving";
import { nameOfAthlete } from "@/server/data/names";
import { roundsAwaitingClip, stepRound } from "@/server/data/rounds";
import { Refusal } from "@/server/domain/errors/refusal";
import { hasLeft, leavingProblem } from "@/server/domain/people/leaving";
import { type CalendarDay, instantOf } from "@/server/domain/time/calendar-day";
import { momentInWords } from "@/server/domain/time/words";
import type { Scope } from "./context";
import { noteAct } from "./note-act";

/** Sessions that a refusal names; more are counted. */
const NAMED_SESSIONS = 3;

/**
 * Says from which day on an athlete is gone. Nothing may be booked from then on and, once the day has come, no review be
 * owed; rounds that wait for a clip of theirs are closed as unanswered.
 * @throws Refusal when something is booked or owed, the day is wrong or somebody saved in between
 */
export async function leaveOn(scope: Scope, leftOn: CalendarDay, version: number): Promise<void> {
  const { db, actor, athlete, nowMs, today } = scope;
  const { athleteId } = athlete;
  const stay = await stayOf(db, athleteId);
  if (!stay) throw new Refusal({ reason: "not_found" });
  const why = leavingProblem(leftOn, { ...stay, today });
  if (why) throw new Refusal({ reason: "settings_invalid", why });
  await refuseWhileNeeded(scope, leftOn);
  if (!(await saveLeaving(db, { athleteId, version }, leftOn))) {
    throw new Refusal({ reason: "changed_meanwhile" });
  }
  const waiting = hasLeft(leftOn, today) ? await roundsAwaitingClip(db, athleteId) : [];
  for (const row of waiting) {
    const changes = { pausedOpenMs: null, dueAtMs: null };
    await stepRound(db, row, { step: "lapsed", actorPersonId: actor.personId, nowMs, changes });
  }
  await noteAct(scope, "athlete.left", athleteId, { leftOn, roundsLapsed: waiting.length });
}

/** Takes back that an athlete leaves or has left. @throws Refusal when none was known, or somebody saved in between */
export async function comeBack(scope: Scope, version: number): Promise<void> {
  const { db, athlete } = scope;
  const { athleteId } = athlete;
  const stay = await stayOf(db, athleteId);
  if (!stay?.leftOn || !(await saveLeaving(db, { athleteId, version }, null))) {
    throw new Refusal({ reason: "changed_meanwhile" });
  }
  await noteAct(scope, "athlete.returned", athleteId, { leftOn: stay.leftOn });
}

/** Refuses what begins something new for an athlete who has left by a day. */
export async function refuseIfLeft({ db }: Pick<Scope, "db">, athleteId: string, day: CalendarDay) {
  const leftOn = (await stayOf(db, athleteId))?.leftOn ?? null;
  if (leftOn === null || !hasLeft(leftOn, day)) return;
  const { givenName } = await nameOfAthlete(db, athleteId);
  throw new Refusal({ reason: "athlete_left", athleteGivenName: givenName, leftOn });
}

async function refuseWhileNeeded({ db, athlete, nowMs, today }: Scope, leftOn: CalendarDay): Promise<void> {
  const { athleteId, zone } = athlete;
  const booked = await bookedFrom(db, athleteId, instantOf(leftOn, 0, zone), nowMs);
  const rounds = hasLeft(leftOn, today) ? await roundsOwedTo(db, athleteId) : 0;
  if (booked.length + rounds === 0) return;
  const named = booked.slice(0, NAMED_SESSIONS).map((each) => momentInWords(each.startsAtMs, zone));
  const { givenName } = await nameOfAthlete(db, athleteId);
  throw new Refusal({
    reason: "athlete_not_free",
    athleteGivenName: givenName,
    booked: named,
    moreBooked: booked.length - named.length,
    rounds,
  });
}
