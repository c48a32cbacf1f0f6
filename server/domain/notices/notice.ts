import { OF_AGE_YEARS } from "../people/person";

/** Where a notice stands: `kept` when no mail server is set, so that an admin reads it here. */
export const NOTICE_STATES = ["waiting", "sent", "kept", "failed"] as const;
export type NoticeState = (typeof NOTICE_STATES)[number];

/** What a notice tells of. */
export const NOTICE_KINDS = [
  "invitation",
  "reset",
  "clip_received",
  "round_taken",
  "retake_asked",
  "review_sent",
  "addendum_sent",
  "answer_received",
  "check_sent",
  "round_lapsed",
  "round_withdrawn",
  "session_booked",
  "session_moved",
  "session_cancelled",
  "session_logged",
  "session_without_room",
  "pain_reported",
  "pain_cleared",
  "limit_overridden",
  "consent_changed",
] as const;
export type NoticeKind = (typeof NOTICE_KINDS)[number];

/** What a notice says: the subject in one line, the body as plain text. */
export interface NoticeWords {
  kind: NoticeKind;
  subject: string;
  body: string;
}

/** A notice that still fails after this many tries stays failed until an admin sends it again. */
export const MAX_TRIES = 8;

/** Wait before try `attempts + 1`: 1, 2, 4 ... minutes, at most 2 h, in milliseconds. */
export function retryAfterMs(attempts: number): number {
  return Math.min(2 ** Math.max(0, attempts - 1) * 60_000, 7_200_000);
}

/**
 * What is kept of a notice once it has left: a single-use link went with the mail alone. Beside it, whoever reads the
 * outbox or a copy of the database could use it first.
 * @example bodyOnceSent("Open\nhttps://a.example/join/x1_-yyyyyyyyyyyyyyyyyyyy\nsoon") // "Open\n(the link went with the mail)\nsoon"
 */
export function bodyOnceSent(body: string): string {
  return body.replaceAll(/\S*\/join\/[\w-]{20,}/g, "(the link went with the mail)");
}

/**
 * Who is told of something about an athlete: an athlete of age always, a minor with a sign-in of their own and then
 * never without every guardian; guardians of an athlete of age only when the athlete lets them.
 * @returns nobody when a minor has no guardian on record: a message never reaches a minor alone
 */
export function recipientsFor(family: {
  athletePersonId: string;
  ageYears: number;
  athleteHasSignIn: boolean;
  guardianPersonIds: readonly string[];
  grantsGuardians: boolean;
}): string[] {
  const isMinor = family.ageYears < OF_AGE_YEARS;
  if (isMinor && family.guardianPersonIds.length === 0) return [];
  const guardians = isMinor || family.grantsGuardians ? family.guardianPersonIds : [];
  const isTold = !isMinor || family.athleteHasSignIn;
  return [...new Set([...(isTold ? [family.athletePersonId] : []), ...guardians])];
}
