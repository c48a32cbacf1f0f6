import type { SecondAdult } from "./second-adult";

/** Something that can only be in one session at a time. Staff who watch are claimed under `coach:` like those who teach. */
export type ClaimResource = `coach:${string}` | `lane:${string}` | `athlete:${string}`;

/** A resource taken for the half-open span `[startsAtMs, endsAtMs)`, UTC epoch milliseconds. */
export interface Claim {
  resource: ClaimResource;
  startsAtMs: number;
  endsAtMs: number;
}

/** A half-open span of instants as sessions write it. */
export interface Span {
  startsAtMs: number;
  endsAtMs: number;
}

/** Who and what a session brings together. */
export interface SessionParties extends Span {
  coachId: string;
  laneId: string;
  athleteIds: readonly string[];
  secondAdult: SecondAdult | null;
}

/**
 * What a session takes for its span: its coach, its lane, each athlete, and a second adult who is staff (a watching
 * guardian is not claimed). Each resource once, in order of name, so that every writer takes them in the same order.
 * @example claimsOf({ coachId: "p1", laneId: "l1", athleteIds: ["a1"], secondAdult: null, startsAtMs: 0, endsAtMs: 1 })
 * // athlete:a1, coach:p1, lane:l1
 */
export function claimsOf(session: SessionParties): Claim[] {
  const { startsAtMs, endsAtMs } = session;
  const resources = new Set<ClaimResource>([`coach:${session.coachId}`, `lane:${session.laneId}`]);
  for (const athleteId of session.athleteIds) resources.add(`athlete:${athleteId}`);
  if (session.secondAdult?.kind === "staff") resources.add(`coach:${session.secondAdult.personId}`);
  return [...resources].sort().map((resource) => ({ resource, startsAtMs, endsAtMs }));
}

/** Whether two half-open spans share an instant. One that ends when the other starts does not; an empty one never does. */
export function overlaps(a: Span, b: Span): boolean {
  return Math.max(a.startsAtMs, b.startsAtMs) < Math.min(a.endsAtMs, b.endsAtMs);
}

/** Whether any claim on the resource overlaps the span. */
export function isTaken(busy: readonly Claim[], resource: ClaimResource, span: Span): boolean {
  return busy.some((claim) => claim.resource === resource && overlaps(claim, span));
}
