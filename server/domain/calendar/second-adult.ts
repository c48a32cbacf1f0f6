import { isOfAge } from "../people/person";
import type { CalendarDay } from "../time/calendar-day";

/** Who can see a one-to-one session besides its coach: a guardian who watches, or another member of staff. */
export const SECOND_ADULT_KINDS = ["guardian", "staff"] as const;
export type SecondAdultKind = (typeof SECOND_ADULT_KINDS)[number];

/** A second adult by person id. That a `staff` person is on the staff is for the caller to look up. */
export interface SecondAdult {
  kind: SecondAdultKind;
  personId: string;
}

/** Of an athlete, what the question needs. */
export interface AthleteOnSession {
  id: string;
  bornOn: CalendarDay;
  guardianIds: readonly string[];
}

/** Why the session cannot be held like this: nobody named, the coach named twice, or a guardian of somebody else. */
export interface SecondAdultMissing {
  reason: "second_adult_missing";
  athleteId: string;
  why: "nobody_named" | "is_the_coach" | "not_their_guardian";
}

/**
 * A one-to-one session with a minor (under 18 on its day, by the site's calendar) names a second adult other than the
 * coach: the open, observable and interruptible practice asked for by the minor-athlete policies of sport. Sessions
 * of two or more athletes, and athletes of 18, need none; what is written down of one named all the same says
 * {@link keptSecondAdult}.
 * @returns null when the session may be held
 */
export function secondAdultMissing(session: {
  coachId: string;
  athletes: readonly AthleteOnSession[];
  day: CalendarDay;
  secondAdult: SecondAdult | null;
}): SecondAdultMissing | null {
  const [athlete, ...others] = session.athletes;
  if (athlete === undefined || others.length > 0) return null;
  if (isOfAge(athlete.bornOn, session.day)) return null;
  const why = whyNotSeen(athlete, session.coachId, session.secondAdult);
  return why === null ? null : { reason: "second_adult_missing", athleteId: athlete.id, why };
}

function whyNotSeen(
  athlete: AthleteOnSession,
  coachId: string,
  secondAdult: SecondAdult | null,
): SecondAdultMissing["why"] | null {
  if (secondAdult === null) return "nobody_named";
  if (secondAdult.personId === coachId) return "is_the_coach";
  const isStranger = secondAdult.kind === "guardian" && !athlete.guardianIds.includes(secondAdult.personId);
  return isStranger ? "not_their_guardian" : null;
}

/**
 * The second adult that is written on a session. A guardian stands there for their own athlete alone: named on a
 * session that others come to, or on somebody else's, they are left out, since every family of a session reads the name.
 * @example keptSecondAdult([{ id: "a1", bornOn: "2000-01-01", guardianIds: [] }], { kind: "guardian", personId: "p9" }) // null
 */
export function keptSecondAdult(
  athletes: readonly AthleteOnSession[],
  secondAdult: SecondAdult | null,
): SecondAdult | null {
  if (secondAdult?.kind !== "guardian") return secondAdult;
  const [athlete, ...others] = athletes;
  const isTheirs = others.length === 0 && athlete?.guardianIds.includes(secondAdult.personId);
  return isTheirs ? secondAdult : null;
}
