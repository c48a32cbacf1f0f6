import type { StaffRole } from "../people/person";
import { isOfAge } from "../people/person";
import type { CalendarDay } from "../time/calendar-day";

/** What a person can be to an athlete, or to the academy when no athlete is meant. Grants add up. */
export const RELATIONS = [
  "anyone",
  "signed_in",
  "self_minor",
  "self_of_age",
  "guardian",
  "granted_guardian",
  "assigned_coach",
  "other_coach",
  "coach",
  "admin",
] as const;
export type Relation = (typeof RELATIONS)[number];

/** The caller, as read from the database on this request. */
export interface Actor {
  personId: string;
  signInId: string;
  givenName: string;
  roles: readonly StaffRole[];
  /** The athlete this person is, if any. */
  athleteId: string | null;
  /** Athletes this person stands for; ended guardianships left out. */
  guardianOf: readonly string[];
}

/** What access needs to know of an athlete. */
export interface AthleteScope {
  athleteId: string;
  personId: string;
  bornOn: CalendarDay;
  /** IANA zone of the home site: it decides which day today is for this athlete. */
  zone: string;
  coachPersonId: string | null;
  grantsGuardians: boolean;
}

/**
 * Everything the actor is to the athlete on a day. A guardian is one until the athlete's eighteenth birthday; after it
 * an athlete who grants the view makes them a `granted_guardian`, who decides nothing. A coach who is also a parent holds both relations.
 * @param actor null for a caller who is not signed in
 * @param athlete null when the action is about no athlete
 */
export function relationsOf(
  actor: Actor | null,
  athlete: AthleteScope | null,
  today: CalendarDay,
): Set<Relation> {
  const relations = new Set<Relation>(["anyone"]);
  if (!actor) return relations;
  relations.add("signed_in");
  if (actor.roles.includes("admin")) relations.add("admin");
  if (actor.roles.includes("coach")) relations.add("coach");
  if (athlete) for (const relation of familyRelations(actor, athlete, today)) relations.add(relation);
  if (athlete && actor.roles.includes("coach")) {
    relations.add(athlete.coachPersonId === actor.personId ? "assigned_coach" : "other_coach");
  }
  return relations;
}

function familyRelations(actor: Actor, athlete: AthleteScope, today: CalendarDay): Relation[] {
  const ofAge = isOfAge(athlete.bornOn, today);
  const relations: Relation[] = [];
  if (actor.athleteId === athlete.athleteId) relations.push(ofAge ? "self_of_age" : "self_minor");
  const stands = actor.guardianOf.includes(athlete.athleteId);
  if (stands && !ofAge) relations.push("guardian");
  if (stands && ofAge && athlete.grantsGuardians) relations.push("granted_guardian");
  return relations;
}
