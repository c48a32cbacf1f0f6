import { ageOn, type CalendarDay } from "../time/calendar-day";

/** What a member of staff may be; one person may be both. */
export const STAFF_ROLES = ["admin", "coach"] as const;
export type StaffRole = (typeof STAFF_ROLES)[number];

/** The hand an athlete throws with. */
export const THROWING_HANDS = ["right", "left"] as const;
export type ThrowingHand = (typeof THROWING_HANDS)[number];

/** Why a single-use link was made. */
export const LINK_PURPOSES = ["invitation", "reset"] as const;
export type LinkPurpose = (typeof LINK_PURPOSES)[number];

/** How long a single-use link lives, by purpose, in milliseconds: a week to join, an hour to reset. */
export const LINK_LIFE_MS: Record<LinkPurpose, number> = { invitation: 7 * 86_400_000, reset: 3_600_000 };

/** Below this age there is no sign-in: the guardian acts (16 CFR 312, the children's online privacy rule: under 13). */
export const SIGN_IN_AGE_YEARS = 13;

/** From this age an athlete consents, books and pays for themselves (age of majority in most US states). */
export const OF_AGE_YEARS = 18;

/** Whether the athlete acts for themselves on the day. */
export function isOfAge(bornOn: CalendarDay, day: CalendarDay): boolean {
  return ageOn(bornOn, day) >= OF_AGE_YEARS;
}

/** Whether the athlete may have a sign-in of their own on the day. */
export function maySignIn(bornOn: CalendarDay, day: CalendarDay): boolean {
  return ageOn(bornOn, day) >= SIGN_IN_AGE_YEARS;
}

/** "Given Family", or the words that stand in for an erased name. */
export function fullName(person: { givenName: string; familyName: string }): string {
  return `${person.givenName} ${person.familyName}`.trim() || "Name erased";
}
